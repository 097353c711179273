package org.standwright.viewer.scene;

import org.standwright.geom.Vec3;

/**
 * What lies under the pointer.
 *
 * @param label of the part or bought thing
 * @param point on its surface, assembly frame, mm
 */
public record Hit(String label, Vec3 point) {}
