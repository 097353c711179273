package org.standwright.design.wall.built;

import java.util.List;
import org.standwright.geom.Interval;

/**
 * One strip of a row.
 *
 * @param label of its part in the assembly
 * @param row its number from the lowest, 1 for the first
 * @param along from end to end, from the wall's left end, mm
 * @param top height of its high edge above the floor, mm
 * @param studs centres of the studs that it is screwed to, from the left, from the wall's left end, mm
 * @param screws heights of the screws at each stud above the strip's lower edge, from the lowest, mm
 */
public record Strip(String label, int row, Interval along, double top, List<Double> studs, List<Double> screws) {
    public Strip {
        studs = List.copyOf(studs);
        screws = List.copyOf(screws);
    }

    /** From its left end to the first stud, mm. */
    public double overhangLeft() {
        return studs.get(0) - along.from();
    }

    /** From the last stud to its right end, mm. */
    public double overhangRight() {
        return along.to() - studs.get(studs.size() - 1);
    }
}
