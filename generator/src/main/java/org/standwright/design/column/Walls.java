package org.standwright.design.column;

/** The four panels around an opening. */
record Walls(Wall left, Wall right, Wall lower, Wall upper) {
    /** One of {@code count} openings side by side within these walls. */
    Walls across(int index, int count) {
        return new Walls(index == 0 ? left : Wall.SHARED, index == count - 1 ? right : Wall.SHARED, lower, upper);
    }

    /** One of {@code count} openings on top of each other within these walls, 0 at the top. */
    Walls down(int index, int count) {
        return new Walls(left, right, index == count - 1 ? lower : Wall.SHARED, index == 0 ? upper : Wall.SHARED);
    }

    /** Those of one of {@code count} bays of a carcass. */
    static Walls ofBay(int index, int count) {
        return new Walls(Wall.OUTER, Wall.OUTER, Wall.OUTER, Wall.OUTER).across(index, count);
    }
}
