package org.standwright.check.fastener;

import java.util.List;

/**
 * Screws in a row that carry a load square to it, of one size. Each takes an equal share of the load, and of the moment about
 * their middle a share by its distance from there: F = P (1/n + (xm - xp) (xm - x) / sum((x - xm)²)) (statics, own
 * derivation).
 *
 * @param places along the row, mm
 */
record ScrewRow(List<Double> places) {
    ScrewRow {
        places = List.copyOf(places);
    }

    /** What the most loaded of them carries of a load at this place along the row; all of it where they are at one place. */
    double worst(double load) {
        double middle = places.stream().mapToDouble(x -> x).average().orElse(0);
        double spread =
                places.stream().mapToDouble(x -> (x - middle) * (x - middle)).sum();
        return spread == 0
                ? 1
                : places.stream()
                        .mapToDouble(x -> Math.abs(1.0 / places.size() + (middle - load) * (middle - x) / spread))
                        .max()
                        .orElseThrow();
    }
}
