/** Machine rules: where the machine stands, what it needs beside it. */
package org.standwright.check.machine;
