/**
 * Part and its features to a closed solid.
 *
 * <p>{@link Solids} is the door: the blank and what each feature sweeps out of it go to the 1/1024 mm grid ({@link
 * Workpiece}), the kernel cuts ({@link Carving}), and the faces are put together again ({@link
 * org.standwright.solid.mesh.ClosedMesh}). Vertices lie on the grid too, so that each is an exact float below 16 m.
 */
package org.standwright.solid;
