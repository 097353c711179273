/**
 * Which part is cut from which place on which sheet, checked before anybody sees it.
 *
 * <p>In this package lengths are integers of 1/3200 mm ({@link org.standwright.sheet.SheetUnit}), in which 1/64 in and
 * 0.01 mm are both exact. Sheet frame: x along the sheet's length (its grain) from 0, y across it, both from one corner
 * of the board as bought, before it is trimmed.
 *
 * <p>{@link org.standwright.sheet.SheetPlanner} is the door. Inside, a packing job is the cut list of one material with
 * kerf and trim taken out; the packer answers it with cut trees, which carry no places; sawing a tree gives places,
 * cuts and offcuts; {@link org.standwright.sheet.SheetPlanVerifier} judges them, sharing only units and values with the rest.
 */
package org.standwright.sheet;
