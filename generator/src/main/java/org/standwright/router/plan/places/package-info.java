/**
 * Finds places for rectangles anywhere on boards, without cuts from edge to edge: {@link
 * org.standwright.router.plan.places.PlaceSearch} is the door.
 *
 * <p>The jobs are those of the sheet planner, sizes enlarged by the spacing instead of the kerf. The loop is the one of
 * its search too, but not its code: there a board is a tree whose rests are disjoint and a piece is put in or taken out
 * at one of them; here the free rectangles overlap, and each piece changes many.
 */
package org.standwright.router.plan.places;
