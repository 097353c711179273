package org.standwright.export.mesh;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.standwright.Presets;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Part;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;
import org.standwright.solid.PlacedSolid;
import org.standwright.solid.RandomPart;
import org.standwright.solid.SolidException;
import org.standwright.solid.Solids;

/** What the files are tried with: all presets, stands and walls, and parts that nobody has thought of. */
final class MeshSamples {
    /** Others than the tests of solids take. */
    private static final long FIRST_SEED = 90_000;

    private MeshSamples() {}

    static Stream<AssemblySolids> presets() {
        return Presets.solids().stream();
    }

    /** One part each, off the origin and turned; parts of which nothing is left are passed over. */
    static Stream<AssemblySolids> randomParts(int count) {
        return LongStream.iterate(FIRST_SEED, seed -> seed + 1)
                .mapToObj(RandomPart::of)
                .flatMap(part -> alone(part).stream())
                .limit(count);
    }

    private static Optional<AssemblySolids> alone(Part part) {
        try {
            var solid = Solids.of(part);
            var placement = new Placement(Axis.Z_PLUS, Axis.Y_MINUS, new Vec3(-12.5, 1000, 900.125));
            var placed = new PlacedSolid("random", new PlacedPart(part.name(), part, placement), solid);
            return Optional.of(new AssemblySolids(part.name(), Fineness.FILE, List.of(placed)));
        } catch (SolidException nothingLeft) {
            return Optional.empty();
        }
    }
}
