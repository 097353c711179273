/**
 * Loops on a plane to the triangles of the faces inside them, exactly.
 *
 * <p>{@link Triangles} is the door; {@link Corners} says what loops there are. {@link Sweep} goes over the corners from
 * left to right and keeps a {@link Funnels funnel} for every part of a face that is still open; {@link Cover} proves
 * that nothing is missing and nothing covered twice.
 */
package org.standwright.solid.mesh.face;
