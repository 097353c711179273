package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.io.core.input.StreamGeometryInput;
import org.apache.commons.geometry.io.euclidean.threed.GeometryFormat3D;
import org.apache.commons.geometry.io.euclidean.threed.IO3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.Presets;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;

class MassPropertiesTest {
    private static final double DENSITY = SampleParts.PLYWOOD.density();
    private static final Bodies BLANK = box(0, 600, 0, 400, 0, 18);

    static Stream<StandDesign> stands() {
        return Presets.stands();
    }

    @Test
    void ofAPlainBoardAreThoseOfTheHandbook() {
        var plain = Solids.of(SampleParts.plain()).massProperties(DENSITY);

        double mass = 0.6 * 0.4 * 0.018 * DENSITY;
        assertThat(plain.mass()).isCloseTo(mass, within(1e-12));
        assertThat(plain.centre()).isEqualTo(new Vec3(300, 200, 9));
        assertThat(plain.inertia().xx()).isCloseTo(mass * (400 * 400 + 18 * 18) / 12, within(1e-7));
        assertThat(plain.inertia().yy()).isCloseTo(mass * (18 * 18 + 600 * 600) / 12, within(1e-7));
        assertThat(plain.inertia().zz()).isCloseTo(mass * (600 * 600 + 400 * 400) / 12, within(1e-7));
    }

    @Test
    void ofABoardWithGroovesDadosAndARabbetAreThoseOfItsBoxes() {
        var part = SampleParts.plain()
                .with(
                        Channel.across(Face.SHOW, 0, 9, 400, 12),
                        Channel.across(Face.SHOW, 205, 223, 400, 6),
                        Channel.along(Face.BENCH, 31, 37, 600, 5),
                        Channel.across(Face.BENCH, 400, 450, 400, 2.5));
        var expected = BLANK.minus(box(0, 9, 0, 400, 6, 18))
                .minus(box(205, 223, 0, 400, 12, 18))
                .minus(box(0, 600, 31, 37, 0, 5))
                .minus(box(400, 450, 0, 400, 0, 2.5))
                .plus(box(400, 450, 31, 37, 0, 2.5)); // both take it

        same(Solids.of(part).massProperties(DENSITY), expected, 1e-9);
    }

    /** A circle's polygon has its area to a part in a thousand or better, so that is all one can ask of what holes take. */
    @Test
    void changeWithHolesByTheirCylinders() {
        var part = SampleParts.plain()
                .with(
                        Hole.through(100, 90, 60, "hose"),
                        Hole.blind(Face.SHOW, 420, 330, 35, 12.5, "cup"),
                        Hole.blind(Face.BENCH, 500, 60, 26, 9, "washer"),
                        new EdgeHole(Edge.X0, 250, 9, 8, 40, "dowel"),
                        new EdgeHole(Edge.Y1, 300, 9, 10, 50, "bolt"));
        var cylinders = cylinder(2, new Vec3(100, 90, 9), 60, 18)
                .plus(cylinder(2, new Vec3(420, 330, 18 - 6.25), 35, 12.5))
                .plus(cylinder(2, new Vec3(500, 60, 4.5), 26, 9))
                .plus(cylinder(0, new Vec3(20, 250, 9), 8, 40))
                .plus(cylinder(1, new Vec3(300, 375, 9), 10, 50));

        var taken = BLANK.minus(Bodies.of(Solids.of(part).massProperties(DENSITY)));
        same(taken, cylinders, 1e-3);
    }

    @Test
    void haveTheVolumeAndCentreThatAnotherLibraryFinds() {
        for (var part : List.of(SampleParts.plain(), SampleParts.drawerSide(), SampleParts.crossing())) {
            var placed = new PlacedSolid("carcass", placed(part, Axis.Y_MINUS, Axis.Z_PLUS), Solids.of(part));
            var tree = IO3D.readTriangleMesh(
                            new StreamGeometryInput(new ByteArrayInputStream(ReadBack.stl(placed.inPlace()))),
                            GeometryFormat3D.STL,
                            Precision.doubleEquivalenceOfEpsilon(1e-6))
                    .toTree();
            var found = placed.massProperties();
            var centre = found.centre();

            assertThat(found.mass() / DENSITY * 1e9).isCloseTo(tree.getSize(), within(1e-6 * tree.getSize()));
            assertThat(tree.getCentroid().distance(Vector3D.of(centre.x(), centre.y(), centre.z())))
                    .isLessThan(1e-4);
        }
    }

    @Test
    void keepTraceAndDeterminantInEveryPlacement() {
        var part = SampleParts.drawerSide();
        var solid = Solids.of(part);
        var own = solid.massProperties(DENSITY).inertia();
        for (var placed : placements(part)) {
            var there = new PlacedSolid("carcass", placed, solid).massProperties();

            assertThat(trace(there.inertia())).isCloseTo(trace(own), within(1e-12 * trace(own)));
            assertThat(determinant(there.inertia())).isCloseTo(determinant(own), within(1e-9 * determinant(own)));
        }
    }

    @Test
    void areInEveryPlacementThoseOfTheSolidThere() {
        var part = SampleParts.crossing();
        var solid = Solids.of(part);
        for (var placed : placements(part)) {
            var there = new PlacedSolid("carcass", placed, solid);

            same(there.massProperties(), tetrahedra(there), 1e-9);
        }
    }

    @Test
    void haveNoProductsWhereTheBoardIsTheSameOnBothSides() {
        var part = SampleParts.plain()
                .with(
                        Channel.along(Face.SHOW, 191, 209, 600, 6),
                        Channel.along(Face.BENCH, 191, 209, 600, 6),
                        Hole.through(100, 100, 20, "bolt"),
                        Hole.through(500, 100, 20, "bolt"),
                        Hole.through(100, 300, 20, "bolt"),
                        Hole.through(500, 300, 20, "bolt"));
        var found = Solids.of(part).massProperties(DENSITY);

        double none = 1e-9 * trace(found.inertia());
        assertThat(found.inertia().xy()).isCloseTo(0, within(none));
        assertThat(found.inertia().yz()).isCloseTo(0, within(none));
        assertThat(found.inertia().zx()).isCloseTo(0, within(none));
        assertThat(found.centre().x()).isCloseTo(300, within(1e-9));
    }

    @Test
    void haveAProductBelowZeroWhereTheFarCornerIsMissing() {
        var corner = SampleParts.plain().with(Hole.through(550, 350, 80, "corner"));

        assertThat(Solids.of(corner).massProperties(DENSITY).inertia().xy()).isNegative();
    }

    @Test
    void loseNothingFarFromTheOrigin() {
        var solid = Solids.of(SampleParts.crossing());
        var far = solid.placed(new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(15_000, -15_000, 16_000)), "far");

        assertThat(far.massProperties(DENSITY).inertia())
                .isEqualTo(solid.massProperties(DENSITY).inertia());
    }

    @Test
    void addUpToThoseOfOneBoardThatWasSawnInTwo() {
        var left = new PlacedPart(
                "left",
                Part.blank("left", SampleParts.PLYWOOD, 250, 400),
                new Placement(Axis.X_PLUS, Axis.Y_PLUS, Vec3.ZERO));
        var right = new PlacedPart(
                "right",
                Part.blank("right", SampleParts.PLYWOOD, 350, 400),
                new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(250, 0, 0)));
        var solids = AssemblySolids.of(assembly(left, right));

        same(solids.massProperties(), BLANK, 1e-12);
        same(solids.massProperties("carcass"), BLANK, 1e-12);
    }

    @Test
    void ofNothingChangeNothing() {
        var plain = Solids.of(SampleParts.plain()).massProperties(DENSITY);

        assertThat(plain.plus(MassProperties.NOTHING)).isEqualTo(plain);
        assertThat(MassProperties.NOTHING.plus(plain).centre()).isEqualTo(plain.centre());
        assertThat(MassProperties.NOTHING.plus(MassProperties.NOTHING)).isEqualTo(MassProperties.NOTHING);
    }

    @Test
    void areRefusedForAGroupWithoutBoards() {
        var solids = AssemblySolids.of(assembly(placed(SampleParts.plain(), Axis.X_PLUS, Axis.Y_PLUS)));

        assertThatThrownBy(() -> solids.massProperties("lid"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("group 'lid' of 'cabinet' has no boards; ask for one that has.");
    }

    @ParameterizedTest
    @MethodSource("stands")
    void ofAWholeStandAreTheSumOverItsBoards(StandDesign design) {
        var solids = AssemblySolids.of(StandBuilder.build(design).assembly());
        var all = new Tetrahedra();
        for (var placed : solids.solids()) {
            all.add(placed.inPlace(), placed.material().density());
        }

        same(solids.massProperties(), all.bodies(), 1e-9);
        assertThat(solids.mass()).isEqualTo(solids.massProperties().mass());
        double groups = solids.solids().stream()
                .map(PlacedSolid::group)
                .distinct()
                .mapToDouble(group -> solids.massProperties(group).mass())
                .sum();
        assertThat(groups).isCloseTo(solids.mass(), within(1e-9 * groups));
    }

    private static Bodies tetrahedra(PlacedSolid placed) {
        var all = new Tetrahedra();
        all.add(placed.inPlace(), DENSITY);
        return all.bodies();
    }

    /** Mass, centre and every component of the tensor, to a share of the largest. */
    private static void same(MassProperties found, Bodies expected, double share) {
        assertThat(found.mass()).isCloseTo(expected.mass(), within(share * expected.mass()));
        var centre = expected.centre();
        double reach = Math.abs(centre.x()) + Math.abs(centre.y()) + Math.abs(centre.z());
        assertThat(found.centre().x()).isCloseTo(centre.x(), within(share * reach));
        assertThat(found.centre().y()).isCloseTo(centre.y(), within(share * reach));
        assertThat(found.centre().z()).isCloseTo(centre.z(), within(share * reach));
        components(Bodies.tensor(found.inertia()), expected.tensorAboutCentre(), share * trace(found.inertia()));
    }

    private static void same(Bodies found, Bodies expected, double share) {
        assertThat(found.mass()).isCloseTo(expected.mass(), within(share * expected.mass()));
        for (int i = 0; i < 3; i++) {
            assertThat(found.moment()[i]).isCloseTo(expected.moment()[i], within(share * expected.moment()[0]));
        }
        components(found.tensor(), expected.tensor(), share * expected.trace());
    }

    private static void components(double[][] found, double[][] expected, double close) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                assertThat(found[i][j]).as("component %d, %d", i, j).isCloseTo(expected[i][j], within(close));
            }
        }
    }

    private static double trace(Inertia inertia) {
        return inertia.xx() + inertia.yy() + inertia.zz();
    }

    private static double determinant(Inertia inertia) {
        var t = Bodies.tensor(inertia);
        return t[0][0] * (t[1][1] * t[2][2] - t[1][2] * t[2][1])
                + t[0][1] * (t[1][2] * t[2][0] - t[1][0] * t[2][2])
                + t[0][2] * (t[1][0] * t[2][1] - t[1][1] * t[2][0]);
    }

    private static Bodies box(double x0, double x1, double y0, double y1, double z0, double z1) {
        return Bodies.box(DENSITY, new Vec3(x0, y0, z0), new Vec3(x1, y1, z1));
    }

    private static Bodies cylinder(int axis, Vec3 centre, double diameter, double height) {
        return Bodies.cylinder(DENSITY, axis, centre, diameter, height);
    }

    /** All 24 turns. */
    private static List<PlacedPart> placements(Part part) {
        var all = new ArrayList<PlacedPart>();
        for (var along : Axis.values()) {
            for (var across : Axis.values()) {
                if (along.ordinal() / 2 != across.ordinal() / 2) {
                    all.add(placed(part, along, across));
                }
            }
        }
        return all;
    }

    private static PlacedPart placed(Part part, Axis along, Axis across) {
        return new PlacedPart("board", part, new Placement(along, across, new Vec3(700.3, 650.1, 800.7)));
    }

    private static Assembly assembly(PlacedPart... parts) {
        return new Assembly("cabinet", List.of(Group.fixed("carcass", List.of(parts), List.of())), List.of());
    }
}
