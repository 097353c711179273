/**
 * What stands around furniture so that its size can be felt: a floor, a person, the way of the boards through a machine,
 * the wall that cleats hang on.
 *
 * <p>All are plain values in the frame of the assembly (x to the right, y away from the person, z up from the floor, mm);
 * only {@link org.standwright.viewer.scene.around.AroundNodes} draws them.
 */
package org.standwright.viewer.scene.around;
