package org.standwright.design.wall;

import org.standwright.geom.Interval;

/**
 * Who works at the wall, in shoes.
 *
 * @param elbow height of the bent elbow above the floor, mm
 * @param eye height of the eyes above the floor, mm
 */
public record Person(double elbow, double eye) {
    public Person {
        if (!(elbow > 0 && eye > elbow)) {
            throw new IllegalArgumentException("eyes at " + eye + " mm and elbow at " + elbow
                    + " mm do not belong to one person; the eyes are the higher.");
        }
    }

    /** Where hands reach without bending or stretching. */
    public Interval reach() {
        return new Interval(elbow, eye);
    }
}
