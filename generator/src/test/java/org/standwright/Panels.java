package org.standwright;

/** Which of the four panels around an opening are the carcass's own; the others have an opening on both faces. */
record Panels(boolean left, boolean right, boolean lower, boolean upper) {
    static final Panels OF_CARCASS = new Panels(true, true, true, true);

    /** One of {@code count} openings side by side. */
    Panels across(int index, int count) {
        return new Panels(left && index == 0, right && index == count - 1, lower, upper);
    }

    /** One of {@code count} openings on top of each other, 0 at the top. */
    Panels down(int index, int count) {
        return new Panels(left, right, lower && index == count - 1, upper && index == 0);
    }
}
