package org.standwright.design.kit;

import org.standwright.geom.Vec3;

/**
 * Where a dust hose goes on.
 *
 * @param hose its outside diameter, mm
 * @param at centre of the port: x from the left, y from the front and z above the underside of the base, mm
 */
public record DustPort(double hose, Vec3 at) {}
