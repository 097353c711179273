package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.Group;
import javafx.scene.shape.MeshView;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.assembly.Pose;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;

/** Nodes are plain objects: no screen is needed to see which of them are kept. */
class PiecesTest {
    private static final Part BOARD = Part.blank("board", new Material("board", 20, 680, Grain.NONE), 400, 300);
    private static final Part DRILLED = BOARD.with(Hole.through(50, 50, 20, "cable"));
    private static final Assembly THREE = of(BOARD, BOARD, BOARD);
    private static final AssemblySolids SOLIDS = AssemblySolids.of(THREE, Fineness.SCREEN);

    private final Pieces pieces = new Pieces(new Palette());

    @BeforeEach
    void showThreeEqualBoards() {
        pieces.show(Scenery.of(THREE, SOLIDS));
    }

    @Test
    void sharesTheMeshOfEqualBoards() {
        assertThat(faces())
                .hasSize(3)
                .extracting(MeshView::getMesh)
                .containsOnly(faces().get(0).getMesh());
    }

    @Test
    void keepsNodesAndMeshesOfWhatIsTheSame() {
        var before = faces();
        var plain = before.get(0).getMesh();

        show(of(BOARD, DRILLED, BOARD));

        assertThat(faces()).isEqualTo(before);
        assertThat(before).element(0).extracting(MeshView::getMesh).isSameAs(plain);
        assertThat(before).element(1).extracting(MeshView::getMesh).isNotSameAs(plain);
    }

    @Test
    void removesWhatIsGoneAndAddsWhatIsNew() {
        var before = faces();

        show(of(BOARD));
        assertThat(faces()).isEqualTo(before.subList(0, 1));
        show(THREE);
        assertThat(faces()).hasSize(3).startsWith(before.get(0)).doesNotContain(before.get(1));
    }

    @Test
    void movesNodesWithoutTouchingTheirMeshes() {
        var scenery = Scenery.of(THREE, SOLIDS);
        pieces.place(scenery, Pose.closed(THREE));
        var last = faces().get(2);
        var mesh = last.getMesh();

        pieces.place(scenery, Pose.closed(THREE).exploded(1));

        assertThat(last.getMesh()).isSameAs(mesh);
        assertThat(last.localToParent(0, 0, 0).getZ()).isEqualTo(300); // its centre was 100 above that of all
    }

    private void show(Assembly assembly) {
        pieces.show(Scenery.of(assembly, SOLIDS.rebuilt(assembly)));
    }

    private List<MeshView> faces() {
        return ((Group) pieces.nodes().get(0))
                .getChildren().stream().map(MeshView.class::cast).toList();
    }

    /** One above the other, every 100 mm. */
    private static Assembly of(Part... boards) {
        var placed = IntStream.range(0, boards.length)
                .mapToObj(i -> new PlacedPart(
                        "board " + i, boards[i], new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(0, 0, 100.0 * i))))
                .toList();
        return new Assembly(
                "boards", List.of(org.standwright.assembly.Group.fixed("boards", placed, List.of())), List.of());
    }
}
