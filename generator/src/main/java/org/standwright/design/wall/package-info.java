/**
 * What a maker decides about walls of French cleats.
 *
 * <p>A wall has a frame of its own: x to the right along it, seen by a person who faces it, from its left end; heights
 * from the highest point of the floor. Walls are listed from left to right, each meeting the one before in an inside
 * corner of 90°. Lengths are millimetres, masses kilograms, angles degrees.
 */
package org.standwright.design.wall;
