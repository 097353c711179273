/**
 * What lies between two places that are picked: the faces around them and the distance or angle between these.
 *
 * <p>A face is found by {@link org.standwright.viewer.scene.measure.FaceAt} from one triangle of a solid and lies in that
 * solid's frame: measure between solids where they stand ({@link org.standwright.solid.PlacedSolid#inPlace}), whose
 * triangles are counted as those of the solid itself. Solids lie on a grid of 1/1024 mm; lengths are as exact as that.
 */
package org.standwright.viewer.scene.measure;
