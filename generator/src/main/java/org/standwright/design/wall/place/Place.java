package org.standwright.design.wall.place;

import java.util.Comparator;

/** A place for a holder; wall and row count from 0. */
record Place(int wall, int row, double x, double cost) {
    static final Comparator<Place> BEST_FIRST = Comparator.comparingDouble(Place::cost)
            .thenComparingInt(Place::wall)
            .thenComparingInt(Place::row)
            .thenComparingDouble(Place::x);
}
