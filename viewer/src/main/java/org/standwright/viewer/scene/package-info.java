/**
 * An assembly in 3D: what there is to see, and from where.
 *
 * <p>Everything is said in the assembly's frame (x to the right, y away from the person, z up, mm); only the view turns it
 * into the screen's (y down, z away). Colours are in the style sheet, one class for each {@link
 * org.standwright.viewer.scene.Tone}.
 */
package org.standwright.viewer.scene;
