package org.standwright.file.edit;

/**
 * A stretch of a text.
 *
 * @param offset of its first character, from 0
 * @param length in characters
 */
public record Span(int offset, int length) {
    static Span between(int start, int end) {
        return new Span(start, end - start);
    }

    public int end() {
        return offset + length;
    }

    String in(String text) {
        return text.substring(offset, end());
    }
}
