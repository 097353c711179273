/**
 * The command line: one class per command. A command reads, calls, writes and returns its exit code; what it writes to
 * is passed in, so that tests run it in their own process.
 */
package org.standwright.cli;
