/**
 * Which part is cut from which place on which sheet, checked before anybody sees it.
 *
 * <p>In this package lengths are integers of 1/3200 mm ({@link org.standwright.sheet.SheetUnit}), in which 1/64 in and
 * 0.01 mm are both exact. Sheet frame: x along the sheet's length (its grain) from 0, y across it, both from one corner
 * of the board as bought, before it is trimmed.
 */
package org.standwright.sheet;
