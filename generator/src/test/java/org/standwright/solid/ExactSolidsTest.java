package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.geom.Vec3;
import org.standwright.part.Part;
import org.standwright.solid.exact.Cone;
import org.standwright.solid.exact.Cylinder;
import org.standwright.solid.exact.ExactSolid;
import org.standwright.solid.exact.ExactSolid.Face;
import org.standwright.solid.exact.ExactSolids;
import org.standwright.solid.exact.Surface;

/** The exact boundary of every part of every preset, and of boards that nobody has thought of. */
class ExactSolidsTest {
    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));
    private static final int PARTS = FULL ? 1000 : 50;
    private static final double ON = 1e-6;
    private static final Map<String, Part> OF_PRESETS = DistinctParts.all();

    static Stream<Map.Entry<String, Part>> presetParts() {
        return OF_PRESETS.entrySet().stream();
    }

    static LongStream seeds() {
        return LongStream.range(70_000, 70_000 + PARTS);
    }

    @ParameterizedTest
    @MethodSource("presetParts")
    void isExactForEveryPartOfAPreset(Map.Entry<String, Part> named) {
        var part = named.getValue();
        var solid = Solids.of(part);
        var exact = ExactSolids.of(part, solid);

        assertThat(exact.facets()).as("facets of %s", named.getKey()).isZero();
        isClosed(exact, solid);
        var figures = FeatureFigures.of(part);
        if (figures.isEmpty()) {
            double expected = LayeredVolume.exact(part);
            assertThat(ExactVolume.of(exact)).as("volume of %s", part).isCloseTo(expected, within(1e-6 * expected));
            return;
        }
        has(exact, figures.get(), part);
    }

    private static void has(ExactSolid exact, FeatureFigures.Figures figures, Part part) {
        double expected = figures.volume();
        assertThat(ExactVolume.of(exact)).as("volume of %s", part).isCloseTo(expected, within(1e-9 * expected));
        assertThat(count(exact, Cylinder.class)).as("cylinders of %s", part).isEqualTo(figures.cylinders());
        assertThat(count(exact, Cone.class)).as("cones of %s", part).isEqualTo(figures.cones());
    }

    @Test
    void mostPartsOfPresetsHaveFiguresInClosedFormulas() {
        var parts = OF_PRESETS.values();
        assertThat(parts.stream()
                        .filter(part -> FeatureFigures.of(part).isPresent())
                        .count())
                .isGreaterThan(parts.size() / 2);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void closesForAnyPart(long seed) {
        var part = RandomPart.of(seed);
        if (LayeredVolume.of(part) < 1) {
            return;
        }
        var solid = Solids.of(part);
        var exact = ExactSolids.of(part, solid);

        isClosed(exact, solid);
        // of features on the grid: rounding moves no face by more than half a step
        double expected = LayeredVolume.of(part);
        assertThat(ExactVolume.of(exact))
                .as("volume of %s", part)
                .isCloseTo(expected, within(1 + area(solid) / (2 * Solid.PER_MM)));
        if (exact.isExact()) {
            FeatureFigures.of(part).ifPresent(figures -> has(exact, figures, part));
        }
    }

    /** mm². */
    private static double area(Solid solid) {
        double area = 0;
        for (int t = 0; t < solid.triangleCount(); t++) {
            var a = solid.vertex(solid.corner(t, 0));
            var b = solid.vertex(solid.corner(t, 1)).minus(a);
            area += b.cross(solid.vertex(solid.corner(t, 2)).minus(a)).length() / 2;
        }
        return area;
    }

    private static void isClosed(ExactSolid exact, Solid solid) {
        var along = new int[exact.edges().size()];
        var against = new int[along.length];
        faces(exact)
                .flatMap(face -> face.loops().stream())
                .flatMap(List::stream)
                .forEach(use -> {
                    along[use.edge()] += use.along() ? 1 : 0;
                    against[use.edge()] += use.along() ? 0 : 1;
                });
        assertThat(along).containsOnly(1);
        assertThat(against).containsOnly(1);
        faces(exact).forEach(face -> face.loops().forEach(loop -> hangsTogether(exact, loop)));
        faces(exact).forEach(face -> face.loops().forEach(loop -> loop.forEach(use -> liesOn(exact, face, use))));
        int loops = faces(exact).mapToInt(face -> face.loops().size()).sum();
        long faces = faces(exact).count();
        // Euler and Poincaré: a hole in a face counts against it
        assertThat(exact.corners().size() - exact.edges().size() + 2 * faces - loops)
                .isEqualTo(solid.vertexCount() - solid.triangleCount() / 2);
        assertThat(exact.shells()).hasSize(Shells.count(solid));
    }

    private static void hangsTogether(ExactSolid exact, List<ExactSolid.Use> loop) {
        for (int i = 0; i < loop.size(); i++) {
            assertThat(end(exact, loop.get(i), true)).isEqualTo(end(exact, loop.get((i + 1) % loop.size()), false));
        }
    }

    private static int end(ExactSolid exact, ExactSolid.Use use, boolean last) {
        var edge = exact.edges().get(use.edge());
        return last == use.along() ? edge.to() : edge.from();
    }

    private static void liesOn(ExactSolid exact, Face face, ExactSolid.Use use) {
        var edge = exact.edges().get(use.edge());
        var along = new Along(exact, edge);
        isOn(face.surface(), exact.corners().get(edge.from()));
        assertThat(along.at(0, 0).at().minus(exact.corners().get(edge.from())).length())
                .isLessThan(ON);
        assertThat(along.at(along.pieces() - 1, 1)
                        .at()
                        .minus(exact.corners().get(edge.to()))
                        .length())
                .isLessThan(ON);
        for (int piece = 0; piece < along.pieces(); piece++) {
            isOn(face.surface(), along.at(piece, 0.13).at());
            isOn(face.surface(), along.at(piece, 0.5).at());
        }
    }

    private static void isOn(Surface surface, Vec3 at) {
        double distance = surface.distance(at);
        if (!(Math.abs(distance) <= ON)) {
            assertThat(distance).as("%s from %s", at, surface).isCloseTo(0, within(ON));
        }
    }

    private static long count(ExactSolid exact, Class<? extends Surface> kind) {
        return faces(exact).filter(face -> kind.isInstance(face.surface())).count();
    }

    private static Stream<Face> faces(ExactSolid exact) {
        return exact.shells().stream().flatMap(List::stream);
    }
}
