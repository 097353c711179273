/**
 * Triangles in space that are no part's solid: what a cut leaves, a floor, a figure, a face that is picked.
 *
 * <p>{@link org.standwright.viewer.scene.surface.Surface} is a plain value in mm, in whatever frame its owner says; it is
 * seen from the side from which its triangles run counter-clockwise. Only {@link
 * org.standwright.viewer.scene.surface.SurfaceMesh} knows the screen's meshes.
 */
package org.standwright.viewer.scene.surface;
