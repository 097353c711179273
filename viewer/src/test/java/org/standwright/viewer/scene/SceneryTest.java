package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.assembly.Pose;
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
    void closedIsTheAssemblyAsItStands() {
        var scenery = Scenery.of(SOLIDS, Pose.closed(STAND));

        assertThat(scenery.boards())
                .extracting(board -> board.placement().origin())
                .containsExactly(Vec3.ZERO, new Vec3(0, 0, 80));
        assertThat(scenery.blocks()).isEqualTo(STAND.blocks());
        assertThat(scenery.box()).isEqualTo(STAND.box());
    }

    @Test
    void takesTheSlideAlongWithTheDrawer() {
        var scenery = Scenery.of(SOLIDS, Pose.closed(STAND).withOpen("drawer", 0.5));

        assertThat(scenery.boards())
                .extracting(board -> board.placement().origin())
                .containsExactly(Vec3.ZERO, new Vec3(0, -100, 80));
        assertThat(scenery.blocks()).extracting(Block::box).containsExactly(box(0, -100, 90, 10, 150, 120));
        assertThat(scenery.box()).isEqualTo(box(0, -100, 0, 400, 300, 120));
    }

    @Test
    void drawsBoardsAndSlidesApart() {
        var scenery = Scenery.of(SOLIDS, Pose.closed(STAND).exploded(1));

        // the centre is at a height of 60: the bottom's centre goes from 10 to -40, the box's from 90 to 120
        assertThat(scenery.boards())
                .extracting(board -> board.placement().origin().z())
                .containsExactly(-50.0, 110.0);
        assertThat(scenery.blocks()).extracting(block -> block.box().min().z()).containsExactly(135.0);
    }

    private static PlacedPart lying(String label, double z) {
        return new PlacedPart(label, BOARD, new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(0, 0, z)));
    }

    private static Box3 box(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new Box3(new Vec3(x0, y0, z0), new Vec3(x1, y1, z1));
    }
}
