package org.standwright.design.column;

/**
 * One thing in a bay's column that has a height: a front, or an opening without one.
 *
 * @param section of the bay, 0 at the top
 * @param content of the bay, 0 at the top
 * @param given whether the maker gave its height
 * @param shares of the height that is left
 * @param least height, mm; {@code most} is the same where its height is fixed
 */
record Slot(int section, int content, boolean given, double shares, double least, double most) {
    static Slot given(int section, int content, double height) {
        return new Slot(section, content, true, 1, height, height);
    }

    boolean isFixed() {
        return least >= most;
    }

    double within(double height) {
        return Math.max(least, Math.min(most, height));
    }
}
