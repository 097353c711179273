/**
 * One writer per file format: the list of files is the list of formats.
 *
 * <p>A writer takes a value and a stream and opens no file. The same value gives the same bytes anywhere.
 */
package org.standwright.export;
