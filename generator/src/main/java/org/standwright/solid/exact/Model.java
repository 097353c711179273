package org.standwright.solid.exact;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/** A mesh, what its triangles stand for, and the regions that they make. */
record Model(Solid solid, Sides sides, List<Surface> surfaces, Regions regions) {
    /** The surface of a region; none of a loose triangle. */
    Optional<Surface> surface(int region) {
        int label = regions.label(region);
        return label == Labels.LOOSE ? Optional.empty() : Optional.of(surfaces.get(label));
    }

    /** The surface of a region if it is round. */
    Optional<Round> round(int region) {
        return surface(region).filter(Round.class::isInstance).map(Round.class::cast);
    }

    /** Where a side begins in the mesh. */
    Vec3 from(int side) {
        return solid.vertex(sides.from(side));
    }

    /** Where a side ends in the mesh. */
    Vec3 to(int side) {
        return solid.vertex(sides.to(side));
    }

    /** The regions round the vertex that a side begins at. */
    Set<Integer> around(int side) {
        var around = new LinkedHashSet<Integer>();
        int at = side;
        do {
            around.add(regions.left(at));
            at = sides.twin(Sides.before(at));
        } while (at != side);
        return around;
    }
}
