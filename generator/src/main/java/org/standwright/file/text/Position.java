package org.standwright.file.text;

/**
 * A place in a text file.
 *
 * @param line from 1
 * @param column in characters, from 1
 */
public record Position(int line, int column) {}
