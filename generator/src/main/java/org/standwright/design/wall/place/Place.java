package org.standwright.design.wall.place;

import java.util.Comparator;

/**
 * A place for a holder; wall and row count from 0.
 *
 * @param cost what it costs whatever else hangs
 * @param spoilt what it takes from others besides
 */
record Place(int wall, int row, double x, double cost, double spoilt) {
    static final Comparator<Place> BEST_FIRST = Comparator.comparingDouble(Place::total)
            .thenComparingInt(Place::wall)
            .thenComparingInt(Place::row)
            .thenComparingDouble(Place::x);

    double total() {
        return cost + spoilt;
    }
}
