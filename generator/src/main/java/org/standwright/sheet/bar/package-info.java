/**
 * Lengths from bars with as few bars, or as little money, as can be:
 * {@link org.standwright.sheet.bar.BarPlanner} is the door. Lengths are units of 1/3200 mm.
 */
package org.standwright.sheet.bar;
