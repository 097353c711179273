package org.standwright.viewer.scene.measure;

import org.standwright.solid.Solid;

/** Finds the whole face around a triangle that was picked. */
public final class FaceAt {
    private FaceAt() {}

    /**
     * The wall of a hole or a post where the triangle belongs to one that goes all the way round, else the plane.
     *
     * @param triangle its number in the solid
     */
    public static Face of(Solid solid, int triangle) {
        var neighbours = new Neighbours(solid);
        var patch = FlatPatch.around(triangle, solid, neighbours);
        return new RoundWall(solid, neighbours)
                .around(patch)
                .map(Face.class::cast)
                .orElseGet(() -> new FlatFace(
                        patch.normal(),
                        patch.at(),
                        patch.numbers().stream()
                                .map(number -> Triangle.of(solid, number))
                                .toList()));
    }
}
