/**
 * Part and its features to a closed solid; assemblies, their poses and what they weigh.
 *
 * <p>{@link Solids} is the door. The blank and what each feature sweeps out of it go to the 1/1024 mm grid ({@link
 * Workpiece}, {@link Tools}). From there {@link LayeredSolids} goes three ways: a cut that touches nothing is added as it
 * is ({@link FreeCut}); cuts from the two faces go to {@link org.standwright.solid.layer}; around tools from the side
 * that meet others the CSG kernel cuts small cells ({@link Cells}). All end in one {@link
 * org.standwright.solid.mesh.Shell}. {@link KernelSolids} does everything by the kernel: where the fast way fails, and in
 * tests to judge it. A way that fails says so by a {@link org.standwright.solid.mesh.BrokenMeshException}, and the next
 * is tried. Vertices lie on the grid, so that each is an exact float below 16 m.
 */
package org.standwright.solid;
