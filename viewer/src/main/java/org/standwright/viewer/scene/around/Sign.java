package org.standwright.viewer.scene.around;

import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;

/**
 * Words on something that stands before a wall, to be read from the room.
 *
 * @param centre of the words
 * @param right the way they run, level
 * @param width room for them, mm
 * @param height room for them, mm
 */
public record Sign(String words, Vec3 centre, Axis right, double width, double height) {}
