/**
 * Design files and presets: JSON text in, decisions out, and for everything wrong a message with its line and column.
 *
 * <p>A file is read in one direction: text and tree with positions (both from {@link org.standwright.file.text}), check
 * against the schema, one walk that turns quantities into numbers (mm, kg, N), fills in defaults and puts presets in
 * place, then records. The schema is the only list of fields, ranges and defaults; editors use the same file.
 */
package org.standwright.file;
