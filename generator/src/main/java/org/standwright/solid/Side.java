package org.standwright.solid;

import java.util.List;
import org.standwright.solid.mesh.Planes.Plane;

/**
 * A flat, convex piece of a tool's or a blank's surface.
 *
 * @param corners x, y and z of each in turn, counter-clockwise from outside, 1/1024 mm
 * @param plane that it lies on, facing outwards
 */
record Side(Plane plane, List<int[]> corners) {}
