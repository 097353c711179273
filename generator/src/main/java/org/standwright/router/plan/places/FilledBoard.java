package org.standwright.router.plan.places;

import java.util.List;

/**
 * One board and what lies on it.
 *
 * @param kind index of its kind in the job
 * @param rest area of the largest rectangle that stays free, the spacing taken off, units²
 */
public record FilledBoard(int kind, List<Place> places, long rest) {
    public FilledBoard {
        places = List.copyOf(places);
    }
}
