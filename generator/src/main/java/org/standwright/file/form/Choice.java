package org.standwright.file.form;

/**
 * One of the values that a row's value may be.
 *
 * @param label in words
 * @param json as it is written
 */
public record Choice(String label, String json) {

    @Override
    public String toString() {
        return label;
    }
}
