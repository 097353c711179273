/**
 * Pieces of plane faces to a closed mesh of triangles; every way of cutting ends here.
 *
 * <p>A {@link Shell} takes them on the grid. Edges of faces are added up plane by plane, so that cuts inside a face
 * cancel ({@link EdgeSum}), and corners that are none are dropped ({@link StraightRuns}). {@link Faces} cuts each plane
 * into triangles: {@link Loops} strings edges together, and {@link org.standwright.solid.mesh.face} fills loops. {@link
 * EdgeCheck} has the last word; what merely touches is parted first ({@link TouchSplit}). Pieces that don't meet corner
 * to corner go through {@link Mending}, which breaks edges where other faces have corners ({@link TJunctions}).
 *
 * <p>{@link ClosedMesh} brings pieces to the grid that a kernel leaves, which knows a point only up to rounding
 * ({@link Welder}).
 *
 * <p>Coordinates are 1/1024 mm.
 */
package org.standwright.solid.mesh;
