package org.standwright.router.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Mark;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.router.CutOutline;
import org.standwright.router.SampleBoards;
import org.standwright.router.SampleRouters;
import org.standwright.solid.ModelCuts;
import org.standwright.solid.RandomPart;

/** What is drawn takes the same areas to the same depths as the part's features do, by a model made for the solids' tests. */
class DrawnAreasTest {
    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));
    /** A bit so thin that neither relief nor roundness nor width nor running out counts. */
    private static final Router THIN =
            new Router(0.0002, 1, 0.0001, 0.2, 0, Optional.empty(), Router.Relief.DOG_BONE, 8);
    /** The other model's circles stand off by up to 0.05 mm either way, at equal areas. */
    private static final double PER_MM = 0.012;
    /** Left over where two polygons of one circle meet another line at a glancing angle, mm². */
    private static final double SLIVER = 0.05;
    /** So they take a sliver of what a circle only touches, mm². */
    private static final double TOUCHING = 0.2;

    static Stream<Part> parts() {
        return Stream.concat(
                SampleBoards.presetParts().stream(),
                LongStream.range(0, FULL ? 1000 : 50).mapToObj(RandomPart::of));
    }

    @Test
    void takesWhatTheFeaturesTakeFaceByFaceAndDepthByDepth() {
        parts().forEach(DrawnAreasTest::takesWhatTheFeaturesTake);
    }

    private static void takesWhatTheFeaturesTake(Part part) {
        var ground = ground(part);
        var expected = model(part, ground);
        var drawn = drawn(SampleRouters.machining(part, THIN, part.thickness()), part, ground);

        assertThat(drawn.keySet()).as("depths of %s", part).isEqualTo(expected.keySet());
        expected.forEach((key, area) -> {
            var other = drawn.get(key);
            assertThat(other.getArea())
                    .as("%s of %s", key, part)
                    .isCloseTo(area.getArea(), within(0.05 + PER_MM * area.getLength()));
            assertThat(Flat.without(other, area.buffer(0.06)).getArea())
                    .as("%s beyond the model of %s", key, part)
                    .isLessThan(SLIVER);
            assertThat(Flat.without(area, other.buffer(0.06)).getArea())
                    .as("%s left of the model of %s", key, part)
                    .isLessThan(SLIVER);
        });
    }

    /** What is cut now and still there when the part is finished. */
    private static Geometry ground(Part part) {
        return Flat.both(Flat.of(CutOutline.of(part)), Flat.of(Finished.outline(part)));
    }

    /** A real bit takes more in square corners only, and leaves what no bit so wide reaches. */
    @ParameterizedTest
    @MethodSource("seeds")
    void differsFromTheFeaturesOnlyInCornersWithARealBit(long seed) {
        var part = RandomPart.of(seed);
        var router = SampleRouters.router(Router.Relief.values()[(int) (seed % 3)]);
        var ground = ground(part);
        var expected = model(part, ground);
        var drawn = drawn(SampleRouters.machining(part, router, part.thickness()), part, ground);
        var corners = corners(part, 2 * 1.03 * router.bit());
        drawn.forEach((key, area) -> {
            // what runs out into a neighbour that is as deep takes nothing more
            var beyond = Flat.without(area, asDeep(key, expected).buffer(0.06));
            assertThat(Flat.without(beyond, corners).getArea())
                    .as("%s beyond the model of %s", key, part)
                    .isLessThan(SLIVER);
        });
        double r = router.bit() / 2 + 0.05;
        expected.forEach((key, area) -> {
            var left =
                    Flat.without(area, drawn.getOrDefault(key, Flat.nothing()).buffer(0.06));
            var reached = area.buffer(-r, 32).buffer(r - 0.1, 32);
            assertThat(Flat.without(Flat.both(left, reached), corners).getArea())
                    .as("%s left of the model of %s", key, part)
                    .isLessThan(SLIVER + holesBelow(part, router.smallestHole()));
        });
    }

    /** What of the model goes as deep from the same face, or right through. */
    private static Geometry asDeep(String key, Map<String, Geometry> expected) {
        return union(expected.entrySet().stream()
                .filter(entry -> entry.getKey().equals("through")
                        || entry.getKey().split(" ")[0].equals(key.split(" ")[0])
                                && depth(entry.getKey()) >= depth(key))
                .map(Map.Entry::getValue)
                .toList());
    }

    private static int depth(String key) {
        return key.equals("through") ? Integer.MAX_VALUE : Integer.parseInt(key.split(" ")[1]);
    }

    static LongStream seeds() {
        return LongStream.range(0, FULL ? 1000 : 50);
    }

    /** Area of holes that become marks, mm². */
    private static double holesBelow(Part part, double smallest) {
        return part.features().stream()
                .filter(Hole.class::isInstance)
                .map(Hole.class::cast)
                .filter(hole -> hole.diameter() < smallest)
                .mapToDouble(hole -> Math.PI / 4 * hole.diameter() * hole.diameter())
                .sum();
    }

    /** Discs round all corners of pockets and channels. */
    private static Geometry corners(Part part, double reach) {
        var discs = new ArrayList<Geometry>();
        for (var feature : part.features()) {
            var outline = feature instanceof Pocket pocket
                    ? pocket.outline()
                    : feature instanceof Channel channel ? Outline.of(channel.area()) : null;
            if (outline != null) {
                outline.corners().forEach(at -> discs.add(Flat.disc(at, reach)));
            }
        }
        return union(discs);
    }

    @ParameterizedTest
    @MethodSource("boredParts")
    void boresEachHoleWhereItIs(Part part) {
        var ground = Flat.of(CutOutline.of(part));
        var expected = part.features().stream()
                .filter(Hole.class::isInstance)
                .map(Hole.class::cast)
                .filter(hole -> ground.contains(Flat.point(new Vec2(hole.x(), hole.y()))
                        .buffer(hole.area().width() / 2)))
                .map(hole -> String.format("%.4f %.4f %.4f %s", hole.x(), hole.y(), hole.diameter(), hole.depth()))
                .sorted()
                .toList();
        var drawn = SampleRouters.machining(part, THIN, part.thickness()).operations().stream()
                .filter(operation -> operation.mark() instanceof Mark.Circle)
                .map(operation -> {
                    var circle = (Mark.Circle) operation.mark();
                    var depth = operation.work().layer().endsWith("through")
                            ? OptionalDouble.empty()
                            : operation.work().depth();
                    return String.format(
                            "%.4f %.4f %.4f %s",
                            circle.centre().x(), circle.centre().y(), circle.diameter(), depth);
                })
                .sorted()
                .toList();

        assertThat(drawn).containsAll(expected);
    }

    static Stream<Part> boredParts() {
        return LongStream.range(0, FULL ? 1000 : 50).mapToObj(RandomPart::of);
    }

    /** Key: face and depth in hundredths, 'through' for both. */
    private static Map<String, Geometry> model(Part part, Geometry ground) {
        var all = new TreeMap<String, List<Geometry>>();
        double t = part.thickness();
        for (var cut : ModelCuts.of(part)) {
            boolean whole = cut.low() <= 1e-9 && cut.high() >= t - 1e-9;
            var key =
                    whole ? "through" : cut.low() <= 1e-9 ? key(Face.BENCH, cut.high()) : key(Face.SHOW, t - cut.low());
            all.computeIfAbsent(key, k -> new ArrayList<>()).add(cut.footprint().buffer(0));
        }
        return clipped(all, ground);
    }

    private static Map<String, Geometry> drawn(Machining machining, Part part, Geometry ground) {
        var all = new TreeMap<String, List<Geometry>>();
        for (var operation : machining.operations()) {
            var work = operation.work();
            if (work.kind() == Kind.OUTLINE || work.kind() == Kind.CENTRE_MARK) {
                continue;
            }
            boolean whole = work.depth().getAsDouble() > part.thickness();
            var key = whole
                    ? "through"
                    : key(operation.face().orElseThrow(), work.depth().getAsDouble());
            all.computeIfAbsent(key, k -> new ArrayList<>())
                    .add(operation.mark().accept(new MarkArea()));
        }
        return clipped(all, ground);
    }

    private static Map<String, Geometry> clipped(Map<String, List<Geometry>> all, Geometry ground) {
        var clipped = new TreeMap<String, Geometry>();
        all.forEach((key, areas) -> {
            var area = Flat.both(union(areas), ground);
            if (area.getArea() > TOUCHING) {
                clipped.put(key, area);
            }
        });
        return clipped;
    }

    private static Geometry union(List<Geometry> areas) {
        return areas.isEmpty() ? Flat.nothing() : OverlayNGRobust.union(areas);
    }

    private static String key(Face face, double depth) {
        return face + " " + Math.round(depth * 100);
    }
}
