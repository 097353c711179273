package org.standwright.viewer.hand.stand;

import java.util.OptionalInt;

/**
 * Something that is picked, where it stands.
 *
 * @param bay its place from the left
 * @param cell its place from the top; empty where a whole bay is picked
 */
record Located(Bays bays, int bay, OptionalInt cell) {
    Bays.One here() {
        return bays.across().get(bay);
    }
}
