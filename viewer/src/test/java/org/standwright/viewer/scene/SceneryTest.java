package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;

class SceneryTest {
    private static final Part BOARD = Part.blank("board", new Material("board", 20, 680, Grain.NONE), 400, 300);
    private static final Assembly STAND = new Assembly(
            "stand",
            List.of(
                    Group.fixed("carcass", List.of(lying("bottom", 0)), List.of()),
                    new Group(
                            "drawer",
                            new Vec3(0, -200, 0),
                            List.of(lying("box", 80)),
                            List.of(new Block("slide", Block.Kind.SLIDE, box(0, 0, 90, 10, 250, 120))))),
            List.of());
    private static final AssemblySolids SOLIDS = AssemblySolids.of(STAND, Fineness.SCREEN);

    @Test
    void hasEveryPartWithItsSolid() {
        var scenery = Scenery.of(STAND, SOLIDS);

        assertThat(scenery.boards()).extracting(Scenery.Board::label).containsExactly("bottom", "box");
        assertThat(scenery.boards()).extracting(Scenery.Board::placed).isEqualTo(SOLIDS.solids());
        assertThat(scenery.labels()).containsExactlyInAnyOrder("bottom", "box", "slide");
    }

    @Test
    void paintsFixedPartsByTheirGroupAndOthersByWhatTheyAre() {
        assertThat(Scenery.of(STAND, SOLIDS).boards())
                .extracting(board -> board.tone().styleClass())
                .containsExactly("carcass", "board");
    }

    @Test
    void knowsWhatAPartMovesWith() {
        var scenery = Scenery.of(STAND, SOLIDS);

        assertThat(scenery.opens()).isTrue();
        assertThat(scenery.movingWith("box")).contains("drawer");
        assertThat(scenery.movingWith("bottom")).isEmpty();
    }

    @Test
    void tellsBoughtThingsOfOneLabelApart() {
        var slide = new Block("slide", Block.Kind.SLIDE, box(0, 0, 90, 10, 250, 120));
        var twice = new Assembly("pair", List.of(Group.fixed("slides", List.of(), List.of(slide, slide))), List.of());

        assertThat(Scenery.of(twice, AssemblySolids.of(twice, Fineness.SCREEN)).bought())
                .extracting(Scenery.Bought::key)
                .containsExactly("slide", "slide (2)");
    }

    private static PlacedPart lying(String label, double z) {
        return new PlacedPart(label, BOARD, new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(0, 0, z)));
    }

    private static Box3 box(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new Box3(new Vec3(x0, y0, z0), new Vec3(x1, y1, z1));
    }
}
