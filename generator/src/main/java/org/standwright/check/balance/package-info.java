/**
 * Will the stand tip? Statics on the polygon that its feet span on the floor, whatever way its casters happen to point.
 *
 * <p>A {@link org.standwright.check.balance.SupportPolygon} comes from the feet. About each of its edges every weight and
 * every force has {@link org.standwright.check.balance.Moments}, restoring or overturning;
 * {@link org.standwright.check.balance.LeastRatio} fills drawers and shelves the way that tips soonest. These know nothing
 * about furniture. Lengths are mm, forces N, moments N mm, masses kg, angles degrees; z is the height above the floor.
 */
package org.standwright.check.balance;
