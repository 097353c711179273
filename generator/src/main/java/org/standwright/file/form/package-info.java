/**
 * A design file as a form: for each field that the schema knows, and each that the file gives, one {@link
 * org.standwright.file.form.Row} with its label, its value as written, what else may stand there, and the rows inside.
 *
 * <p>Rows are values: a changed text makes new rows ({@link org.standwright.file.form.Form#of}). What is inside a row is
 * found when it is asked for, so that a long file opens as fast as a short one. Nothing is written here; what a change
 * would write is said as JSON.
 */
package org.standwright.file.form;
