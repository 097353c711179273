package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.standwright.Presets;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.Draft;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;

class RebuiltSolidsTest {
    private static final Part SHELVES = SampleParts.shelves();
    private static final Part PLAIN = SampleParts.plain();
    private static final Part DRAWER = SampleParts.drawerSide();
    private static final AssemblySolids BEFORE = AssemblySolids.of(assembly(
            at("left", SHELVES, 0), at("right", SHELVES, 500), at("back", PLAIN, 900), at("box", DRAWER, 950)));

    @Test
    void buildsOnlyThePartThatWasEdited() {
        var edited = PLAIN.with(Hole.through(100, 100, 60, "cord"));
        var after = BEFORE.rebuilt(assembly(
                at("left", SHELVES, 0), at("right", SHELVES, 500), at("back", edited, 900), at("box", DRAWER, 950)));

        assertThat(sameAsBefore(after)).containsExactly(true, true, false, true);
        assertThat(after.solids().get(2).solid().volume())
                .isLessThan(BEFORE.solids().get(2).solid().volume());
    }

    @Test
    void buildsNothingWhenPartsAreRenamedMovedOrMadeOfAnotherWood() {
        var renamed = new Part("panel", SHELVES.material(), 600, 400, 3, SHELVES.bands(), SHELVES.features());
        var after = BEFORE.rebuilt(assembly(
                at("left panel", renamed, 20),
                at("right", SHELVES, 480),
                at("back", PLAIN, 910),
                at("box", DRAWER, 7)));

        assertThat(sameAsBefore(after)).containsExactly(true, true, true, true);
        assertThat(after.solids()).extracting(PlacedSolid::label).containsExactly("left panel", "right", "back", "box");
        assertThat(after.solids().get(3).inPlace().box().min().x()).isNotEqualTo(950);
    }

    @Test
    void buildsAPartThatIsAddedTwiceOnce() {
        var shelf = Part.blank("shelf", SampleParts.PLYWOOD, 480, 380);
        var after = BEFORE.rebuilt(assembly(at("left", SHELVES, 0), at("upper", shelf, 0), at("lower", shelf, 0)));

        assertThat(after.solids().get(1).solid()).isSameAs(after.solids().get(2).solid());
        assertThat(sameAsBefore(after)).containsExactly(true, false, false);
    }

    @Test
    void forgetsWhatIsNoLongerUsed() {
        var without = BEFORE.rebuilt(assembly(at("left", SHELVES, 0)));
        var again = without.rebuilt(assembly(at("left", SHELVES, 0), at("back", PLAIN, 900)));

        assertThat(sameAsBefore(again)).containsExactly(true, false);
    }

    @Test
    void isWhatBuildingAnewGives() {
        var assembly =
                assembly(at("left", SHELVES, 3), at("cut", PLAIN.with(Channel.across(Face.SHOW, 9, 27, 400, 9)), 9));
        var rebuilt = BEFORE.rebuilt(assembly).solids();
        var anew = AssemblySolids.of(assembly).solids();

        for (int i = 0; i < anew.size(); i++) {
            assertThat(ReadBack.stl(rebuilt.get(i).inPlace()))
                    .isEqualTo(ReadBack.stl(anew.get(i).inPlace()));
        }
    }

    @Test
    void keepsTheFinenessThatTheFirstOnesWereBuiltWith() {
        var screen = AssemblySolids.of(assembly(at("left", SHELVES, 0)), Fineness.SCREEN);
        var holed = PLAIN.with(Hole.through(100, 100, 60, "cord"));

        assertThat(screen.rebuilt(assembly(at("holed", holed, 0)))
                        .solids()
                        .get(0)
                        .solid()
                        .triangleCount())
                .isEqualTo(Solids.of(holed, Fineness.SCREEN).triangleCount());
    }

    @Test
    void namesTheEditedPartThatHasNoSolid() {
        var ghost = PLAIN.with(Channel.along(Face.SHOW, 0, 400, 600, 9), Channel.along(Face.BENCH, 0, 400, 600, 9));
        var building = BEFORE.beginRebuilding(assembly(at("left", SHELVES, 0), at("ghostly back", ghost, 900)));

        assertThatThrownBy(building::get).isInstanceOf(SolidException.class).hasMessageContaining("'ghostly back'");
    }

    @Test
    void buildsNoBoardOfAStandAnewWhenOnlyItsNameIsEdited() {
        var design = Presets.stands().findFirst().orElseThrow();
        var before = AssemblySolids.of(StandBuilder.build(design).assembly(), Fineness.SCREEN);
        var renamed = Draft.of(design, draft -> draft.name = "another name");
        var after = before.rebuilt(StandBuilder.build(renamed).assembly());

        assertThat(distinct(before)).containsAll(distinct(after)).hasSameSizeAs(distinct(after));
    }

    private static List<Boolean> sameAsBefore(AssemblySolids after) {
        var known = distinct(BEFORE);
        return IntStream.range(0, after.solids().size())
                .mapToObj(i -> known.contains(after.solids().get(i).solid()))
                .toList();
    }

    /** A solid equals only itself. */
    private static Set<Solid> distinct(AssemblySolids solids) {
        return solids.solids().stream().map(PlacedSolid::solid).collect(Collectors.toSet());
    }

    private static PlacedPart at(String label, Part part, double x) {
        return new PlacedPart(label, part, new Placement(Axis.Z_PLUS, Axis.Y_MINUS, new Vec3(x, 0, 0)));
    }

    private static Assembly assembly(PlacedPart... parts) {
        return new Assembly("cabinet", List.of(Group.fixed("carcass", List.of(parts), List.of())), List.of());
    }
}
