package org.standwright.sheet.bar;

/**
 * Equal lengths to cut.
 *
 * @param length units
 */
public record BarPiece(String label, int length, int count) {
    public BarPiece {
        if (length <= 0 || count <= 0) {
            throw new IllegalArgumentException("piece '" + label + "' has a length of " + length
                    + " units and a count of " + count + "; both must be more than 0.");
        }
    }
}
