/**
 * Furniture cut open by a plane: what one side of it keeps of every solid, and the faces that the cut leaves.
 *
 * <p>{@link org.standwright.viewer.scene.section.Section} is a value made from values, fast enough to be made anew while a
 * slider moves, away from the screen's thread. Every piece lies in the frame of its part, so that it stands where the
 * whole solid stood.
 */
package org.standwright.viewer.scene.section;
