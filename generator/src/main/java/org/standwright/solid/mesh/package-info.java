/**
 * Pieces of plane faces to a closed mesh of triangles, in five steps.
 *
 * <p>{@link FaceRebuild}: the edges of all pieces are added up plane by plane, so that cuts inside a face cancel
 * ({@link EdgeSum}); edges are broken where other faces have corners ({@link TJunctions}); corners that are none are
 * dropped ({@link StraightRuns}); what is left moves to the grid ({@link GridSnap}). {@link Loops} and {@link Sweep} cut
 * each plane into triangles. {@link TouchSplit} parts what merely touches, and {@link EdgeCheck} has the last word.
 *
 * <p>Coordinates are 1/1024 mm.
 */
package org.standwright.solid.mesh;
