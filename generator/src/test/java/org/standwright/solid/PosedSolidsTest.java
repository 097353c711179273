package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.Presets;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.Pose;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Vec3;

/** Every preset with its drawers open and its boards drawn apart. */
class PosedSolidsTest {
    private static final double STEP = 1.0 / 1024;

    static Stream<AssemblyAndSolids> stands() {
        return Presets.stands().map(AssemblyAndSolids::of);
    }

    record AssemblyAndSolids(Assembly assembly, AssemblySolids solids) {
        static AssemblyAndSolids of(StandDesign design) {
            var assembly = StandBuilder.build(design).assembly();
            return new AssemblyAndSolids(assembly, AssemblySolids.of(assembly, Fineness.SCREEN));
        }

        @Override
        public String toString() {
            return assembly.name();
        }
    }

    @ParameterizedTest
    @MethodSource("stands")
    void closedStandWhereTheyBelong(AssemblyAndSolids stand) {
        var posed = stand.solids.inPlace(Pose.closed(stand.assembly));

        for (int i = 0; i < posed.size(); i++) {
            var placed = stand.solids.solids().get(i);
            assertThat(vertices(posed.get(i))).isEqualTo(vertices(placed.inPlace()));
            assertThat(placed.placement(Pose.closed(stand.assembly))).isEqualTo(placed.placement());
        }
    }

    @ParameterizedTest
    @MethodSource("stands")
    void haveCoordinatesThatAFloatHoldsExactly(AssemblyAndSolids stand) {
        for (var solid : stand.solids.inPlace(somehow(stand.assembly).exploded(0.7312))) {
            for (var vertex : vertices(solid)) {
                assertThat((double) (float) vertex.x()).isEqualTo(vertex.x());
                assertThat((double) (float) vertex.y()).isEqualTo(vertex.y());
                assertThat((double) (float) vertex.z()).isEqualTo(vertex.z());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("stands")
    void comeOutWithTheirDrawerByItsTravelOnTheGridAndNoFurther(AssemblyAndSolids stand) {
        var pose = somehow(stand.assembly);
        for (var placed : stand.solids.solids()) {
            var group = group(stand.assembly, placed.group());
            var travel = group.travel().times(pose.open().getOrDefault(group.name(), 0.0));
            var shift = new Vec3(onGrid(travel.x()), onGrid(travel.y()), onGrid(travel.z()));
            var before = vertices(placed.inPlace());
            var after = vertices(placed.inPlace(pose));

            for (int i = 0; i < before.size(); i++) {
                assertThat(after.get(i)).isEqualTo(before.get(i).plus(shift));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("stands")
    void drawnApartReachNoDeeperIntoEachOtherThanTogether(AssemblyAndSolids stand) {
        var together = stand.solids.inPlace(Pose.closed(stand.assembly));
        var apart = stand.solids.inPlace(Pose.closed(stand.assembly).exploded(0.5));
        int clear = 0;
        for (int i = 0; i < together.size(); i++) {
            for (int j = i + 1; j < together.size(); j++) {
                double before = together.get(i).box().overlap(together.get(j).box());
                double after = apart.get(i).box().overlap(apart.get(j).box());
                assertThat(after).isLessThanOrEqualTo(Math.max(before, 0) + 2 * STEP);
                clear += after < before ? 1 : 0;
            }
        }
        assertThat(clear).isPositive();
    }

    @ParameterizedTest
    @MethodSource("stands")
    void standInTheBoxOfThePose(AssemblyAndSolids stand) {
        var pose = somehow(stand.assembly).exploded(0.3);
        var box = pose.box();
        for (var solid : stand.solids.inPlace(pose)) {
            assertThat(solid.box().union(box).size().minus(box.size()))
                    .satisfies(beyond -> assertThat(Math.max(beyond.x(), Math.max(beyond.y(), beyond.z())))
                            .isLessThanOrEqualTo(2 * STEP));
        }
    }

    @ParameterizedTest
    @MethodSource("stands")
    void areRefusedSoFarOutThatAFloatCouldNotHoldThem(AssemblyAndSolids stand) {
        assertThatThrownBy(
                        () -> stand.solids.inPlace(Pose.closed(stand.assembly).exploded(200)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("but a solid must stay within 16384 mm.");
    }

    @ParameterizedTest
    @MethodSource("stands")
    void comeFromGroupsThatAreCalledDifferently(AssemblyAndSolids stand) {
        assertThat(stand.assembly.groups()).extracting(Group::name).doesNotHaveDuplicates();
    }

    /** Every drawer open by an odd share. */
    private static Pose somehow(Assembly assembly) {
        var random = new SplittableRandom(20);
        var pose = Pose.closed(assembly);
        for (var group : assembly.groups()) {
            if (group.moves()) {
                pose = pose.withOpen(group.name(), random.nextDouble());
            }
        }
        return pose;
    }

    private static Group group(Assembly assembly, String name) {
        return assembly.groups().stream()
                .filter(group -> group.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double onGrid(double mm) {
        return Math.floor(mm / STEP + 0.5) * STEP;
    }

    private static List<Vec3> vertices(Solid solid) {
        return IntStream.range(0, solid.vertexCount()).mapToObj(solid::vertex).toList();
    }
}
