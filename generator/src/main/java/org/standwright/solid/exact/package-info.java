/**
 * A part as its exact boundary: planes, cylinders and cones that meet in lines, circles, ellipses and, where nothing
 * simpler will do, curves through points of both surfaces.
 *
 * <p>{@link ExactSolids} is the door. The closed triangle mesh of the same part says what meets what, whatever features
 * overlap; the features say where. Every triangle gets the surface that it stands for ({@link Labels}), connected ones
 * make a face ({@link Regions}), a face that runs all the way round gets a seam ({@link Seams}), the corners move onto
 * the exact surfaces ({@link Constraint}) and the edges between them become curves ({@link Curves}). A face whose
 * corners or edges have no place on the exact surfaces, as where two round holes all but touch, stays triangles ({@link
 * ExactSolid#facets}); the solid is closed all the same.
 *
 * <p>Lengths are mm in the part's frame.
 */
package org.standwright.solid.exact;
