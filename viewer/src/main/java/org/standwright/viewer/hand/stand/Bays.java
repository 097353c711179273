package org.standwright.viewer.hand.stand;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.Stand;

/**
 * Bays side by side: those of the carcass, or of a divided part.
 *
 * @param pointer of their list in the file
 * @param written as the file lists them
 * @param across from left to right, as they are built
 */
record Bays(String pointer, ArrayNode written, List<Bays.One> across) {
    Bays {
        across = List.copyOf(across);
    }

    /**
     * @param at its place in the file's list, from 0
     * @param fronts one for each cell of its column
     * @param within for each cell, the bays that it is divided into
     */
    record One(
            String pointer,
            int at,
            ObjectNode written,
            BayLayout layout,
            Column column,
            List<Front> fronts,
            List<Optional<Bays>> within) {
        One {
            fronts = List.copyOf(fronts);
            within = List.copyOf(within);
        }

        String name() {
            return "bay " + layout.name();
        }

        boolean hasWidth() {
            return written.has("width");
        }

        double width() {
            return layout.opening().width();
        }
    }

    static Bays of(Stand stand, ArrayNode written) {
        return new BaysReader(stand.design())
                .bays("/bays", written, stand.design().bays(), stand.bays());
    }

    /** All bays, also those within others, from the left; the outer before the inner. */
    Stream<Bays> all() {
        return Stream.concat(
                Stream.of(this),
                across.stream()
                        .flatMap(bay -> bay.within().stream())
                        .flatMap(Optional::stream)
                        .flatMap(Bays::all));
    }
}
