/**
 * What becomes of which board: sheet plans, the stock and the saw they are for, and an independent judge of them.
 *
 * <p>Lengths are integers of 1/3200 mm ({@link org.standwright.sheet.SheetUnit}), so that nothing is ever rounded on
 * the way. A board lies with its length from left to right; places count from its lower left corner. The packages below
 * are told in the order in which a plan is made: {@code job} (numbers only), {@code bound} (what no plan can do
 * without), {@code cover} (whole boards chosen from patterns), {@code search} (boards as trees of cuts), {@code sawing} (places and cuts in order), {@code plan} (the
 * door). {@code bar} plans solid wood by its length alone.
 */
package org.standwright.sheet;
