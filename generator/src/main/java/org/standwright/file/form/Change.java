package org.standwright.file.form;

/**
 * A value to be written into the file's text.
 *
 * @param pointer where; all that is around it is there already
 * @param json what
 */
public record Change(String pointer, String json) {}
