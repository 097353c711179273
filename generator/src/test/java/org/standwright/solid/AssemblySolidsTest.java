package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Bands;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Part;

class AssemblySolidsTest {
    private static final Part SIDE = SampleParts.shelves();

    @Test
    void buildsPartsOfOneShapeOnce() {
        var twin = new Part("twin", SIDE.material(), 600, 400, 3, Bands.NONE, SIDE.features());
        var assembly =
                assembly(standing("left", SIDE, 0), standing("right", twin, 500), standing("back", plain(), 900));

        var solids = AssemblySolids.of(assembly).solids();

        assertThat(solids).extracting(PlacedSolid::label).containsExactly("left", "right", "back");
        assertThat(solids.get(0).solid()).isSameAs(solids.get(1).solid());
        assertThat(solids.get(0).solid()).isNotSameAs(solids.get(2).solid());
    }

    @Test
    void putsASolidWhereItsPartBelongs() {
        var placed = standing("left", SIDE, 100.3);

        var solid = AssemblySolids.of(assembly(placed)).solids().get(0).inPlace();

        var shift = Math.rint(100.3 * 1024) / 1024;
        // x of the part points up, y to the front, so its thickness points to the right
        assertThat(solid.box()).isEqualTo(new Box3(new Vec3(shift, -400, 0), new Vec3(shift + 18, 0, 600)));
        assertThat(ReadBack.of(solid).openEdges()).isZero();
        assertThat(solid.volume()).isCloseTo(Solids.of(SIDE).volume(), within(1e-3));
    }

    @Test
    void noPlacementTurnsASolidInsideOut() {
        var side = SampleParts.drawerSide();
        double volume = Solids.of(side).volume();
        for (var along : Axis.values()) {
            for (var across : Axis.values()) {
                if (along.ordinal() / 2 != across.ordinal() / 2) {
                    var placed = new PlacedPart("side", side, new Placement(along, across, new Vec3(1.5, 2.25, -3)));
                    var solid =
                            AssemblySolids.of(assembly(placed)).solids().get(0).inPlace();

                    assertThat(solid.volume()).isCloseTo(volume, within(1e-3));
                    assertThat(solid.box()).isEqualTo(placed.box());
                }
            }
        }
    }

    @Test
    void weighsWhatTheFeaturesLeave() {
        var board = plain().with(Channel.along(Face.SHOW, 0, 200, 600, 9));
        var solids = AssemblySolids.of(assembly(standing("a", plain(), 0), standing("b", board, 100)));

        double whole = 0.6 * 0.4 * 0.018 * 680;
        assertThat(solids.mass()).isCloseTo(whole + whole * 3 / 4, within(1e-9));
    }

    @Test
    void namesTheFirstPartThatHasNoSolid() {
        var ghost = plain().with(Channel.along(Face.SHOW, 0, 400, 600, 9), Channel.along(Face.BENCH, 0, 400, 600, 9));
        var assembly = assembly(standing("left", plain(), 0), standing("ghostly side", ghost, 100));

        assertThatThrownBy(() -> AssemblySolids.of(assembly))
                .isInstanceOf(SolidException.class)
                .hasMessageContaining("'ghostly side'");
    }

    private static Part plain() {
        return SampleParts.plain();
    }

    private static PlacedPart standing(String label, Part part, double x) {
        return new PlacedPart(label, part, new Placement(Axis.Z_PLUS, Axis.Y_MINUS, new Vec3(x, 0, 0)));
    }

    private static Assembly assembly(PlacedPart... parts) {
        return new Assembly("cabinet", List.of(Group.fixed("carcass", List.of(parts), List.of())), List.of());
    }
}
