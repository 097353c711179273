/**
 * Statics of tipping, on the polygon that feet span on the floor, whatever way casters happen to point.
 *
 * <p>A {@link org.standwright.check.balance.statics.SupportPolygon} comes from the feet. About each of its edges every
 * weight and every force has {@link org.standwright.check.balance.statics.Moments}, restoring or overturning; {@link
 * org.standwright.check.balance.statics.LeastRatio} fills drawers and shelves the way that tips soonest. Nothing here
 * knows a stand. Lengths are mm, forces N, moments N mm, masses kg, angles degrees; z is the height above the floor.
 */
package org.standwright.check.balance.statics;
