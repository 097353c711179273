/**
 * What is cut from a board's two faces alone, seen from above: one planar arrangement instead of solids.
 *
 * <p>{@link Layers} is the door. The rings of all cuts that meet are drawn into each other ({@link Crossings}, {@link
 * Arrangement}): wherever they cross there is a {@link Spots spot} of the 1/1024 mm grid, and every side that passes
 * through the square around a spot goes through the spot itself, so that no two pieces of sides cross any more (snap
 * rounding; J. D. Hobby, 'Practical segment intersection with finite precision output', Computational Geometry 13,
 * 1999). {@link Slices} and {@link Solidity} find which layers of the board are left on both sides of each piece, and {@link Walls} reads
 * the surface from that: it closes because both sides of a piece are told once.
 *
 * <p>All decisions are exact. Coordinates are 1/1024 mm, at most 2^24.
 */
package org.standwright.solid.layer;
