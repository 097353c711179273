/**
 * Points, boxes, rectangles and outlines: plain values that know nothing about furniture.
 *
 * <p>Lengths are millimetres. Frames are right-handed with z up. Lengths closer than {@link
 * org.standwright.geom.Grid#STEP} are the same length.
 */
package org.standwright.geom;
