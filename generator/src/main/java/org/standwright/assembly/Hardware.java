package org.standwright.assembly;

import org.standwright.geom.Require;

/**
 * Something to buy beside the boards.
 *
 * @param item what to ask for in the shop: 'side-mount slide, full extension, 450 mm'
 * @param count pieces, or pairs where {@code item} says so
 * @param use where it goes
 */
public record Hardware(String item, int count, String use) {
    public Hardware {
        Require.named("hardware", item);
        if (count < 1) {
            throw new IllegalArgumentException(
                    "count of '" + item + "' is " + count + "; leave the line out when none is needed.");
        }
    }
}
