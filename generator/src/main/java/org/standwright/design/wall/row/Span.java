package org.standwright.design.wall.row;

import org.standwright.geom.Interval;

/**
 * A strip of a row, by the studs that it is screwed to.
 *
 * @param first place of its first stud among those that take screws, from 0
 * @param last place of its last stud
 * @param along from end to end, mm
 */
record Span(int first, int last, Interval along) {}
