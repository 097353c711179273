/**
 * Finds places for rectangles anywhere on boards, without cuts from edge to edge: {@link
 * org.standwright.router.plan.places.PlaceSearch} is the door.
 *
 * <p>The jobs are those of the sheet planner, sizes enlarged by the spacing instead of the kerf, and the loop is {@link
 * org.standwright.sheet.lane}. The boards are others: a saw's board is a tree whose rests are disjoint, and a piece goes
 * in or out at one of them; here the free rectangles overlap, and each piece changes many.
 */
package org.standwright.router.plan.places;
