/**
 * Texts of files, the JSON in them with the place of every key and value, and what is wrong with them in plain words.
 *
 * <p>This package knows JSON but no field of a design. Keys and values are named by JSON pointers (RFC 6901); what a
 * reader of messages sees is a field such as {@code bays[0].width} with line and column, both from 1.
 *
 * <p>{@link org.standwright.file.text.Problems} collects: the first word about a field counts, and all of them leave
 * together as one {@link org.standwright.file.text.DesignFileException}.
 */
package org.standwright.file.text;
