/**
 * Where holders hang: those that their maker chose a place for, then all others, each where it costs least.
 *
 * <p>Everything that a holder must not meet is an {@link org.standwright.design.wall.place.Obstruction} in the frame of the
 * wall that it would hang on: x to the right along the wall, heights above the floor, and how far out before the wall. So
 * the places that a row leaves a holder are lists of intervals of x, found exactly and without trying any.
 */
package org.standwright.design.wall.place;
