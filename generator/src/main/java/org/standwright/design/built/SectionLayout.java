package org.standwright.design.built;

import java.util.List;
import java.util.Optional;
import org.standwright.design.Shelves;
import org.standwright.geom.Rect;

/** One part of a bay's height as built, between two level panels. Openings are seen from the front, y is the height. */
public sealed interface SectionLayout {
    Rect opening();

    /**
     * @param drawers from top to bottom
     */
    record Drawers(Rect opening, List<DrawerLayout> drawers) implements SectionLayout {
        public Drawers {
            drawers = List.copyOf(drawers);
        }
    }

    /**
     * @param shelves heights of the shelves' undersides above the opening's lower edge, rising, mm
     * @param kind of the shelves
     */
    record Open(Rect opening, List<Double> shelves, Optional<Shelves.Kind> kind) implements SectionLayout {
        public Open {
            shelves = List.copyOf(shelves);
        }
    }

    /**
     * @param doors one, or a pair from left to right
     * @param shelves heights of the shelves' undersides above the opening's lower edge, rising, mm
     * @param kind of the shelves
     */
    record Closed(Rect opening, List<DoorLayout> doors, List<Double> shelves, Optional<Shelves.Kind> kind)
            implements SectionLayout {
        public Closed {
            doors = List.copyOf(doors);
            shelves = List.copyOf(shelves);
        }
    }

    /**
     * @param use what it is kept clear for
     */
    record Clear(Rect opening, String use) implements SectionLayout {}

    /**
     * @param bays from left to right
     */
    record Divided(Rect opening, List<BayLayout> bays) implements SectionLayout {
        public Divided {
            bays = List.copyOf(bays);
        }
    }
}
