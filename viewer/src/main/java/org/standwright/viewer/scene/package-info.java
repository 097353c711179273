/**
 * An assembly in 3D: what there is to see, how, and from where.
 *
 * <p>{@link org.standwright.viewer.scene.SceneModel} holds everything that can be set and knows no node; {@link
 * org.standwright.viewer.scene.AssemblyView} follows it, and changes it by pointer and keys. What is shown again keeps its
 * nodes by its label and its meshes by its solid, so that an edit costs no more than what it changed.
 *
 * <p>Everything is said in the assembly's frame (x to the right, y away from the person, z up, mm); only the view turns it
 * into the screen's (y down, z away). Colours are in the style sheet, one class for each {@link
 * org.standwright.viewer.scene.Tone}.
 */
package org.standwright.viewer.scene;
