/**
 * Which part is cut from which place on which sheet: the boards to buy, the plans for them, and the judge of a plan.
 *
 * <p>In this package lengths are integers of 1/3200 mm ({@link org.standwright.sheet.SheetUnit}), in which 1/64 in and
 * 0.01 mm are both exact. Sheet frame: x along the sheet's length (its grain) from 0, y across it, both from one corner
 * of the board as bought, before it is trimmed.
 *
 * <p>{@link org.standwright.sheet.SheetPlanVerifier} knows nothing of how a plan is found; finding one is the matter of
 * {@link org.standwright.sheet.search}, which shares only units and values with it.
 */
package org.standwright.sheet;
