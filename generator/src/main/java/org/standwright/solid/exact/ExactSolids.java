package org.standwright.solid.exact;

import java.util.Arrays;
import org.standwright.part.Part;
import org.standwright.solid.Solid;

/** From a part and its mesh to its exact boundary. */
public final class ExactSolids {
    private ExactSolids() {}

    /**
     * The exact boundary of a part.
     *
     * @param solid its mesh, as fine as files need it
     */
    public static ExactSolid of(Part part, Solid solid) {
        var surfaces = Surfaces.of(part);
        var sides = new Sides(solid);
        var labels = Labels.of(solid, sides, surfaces);
        while (true) {
            var model = new Model(solid, sides, surfaces, new Regions(sides, labels));
            var attempt = new Attempt(model);
            if (attempt.solid().isPresent()) {
                return attempt.solid().get();
            }
            if (attempt.offenders().isEmpty()) {
                if (Arrays.stream(labels).allMatch(label -> label == Labels.LOOSE)) {
                    throw new IllegalStateException("the mesh of '" + part.name() + "' bounds nothing.");
                }
                // nothing left to blame: the mesh itself
                Arrays.fill(labels, Labels.LOOSE);
            }
            for (int t = 0; t < labels.length; t++) {
                if (attempt.offenders().contains(model.regions().ofTriangle(t))) {
                    labels[t] = Labels.LOOSE;
                }
            }
        }
    }
}
