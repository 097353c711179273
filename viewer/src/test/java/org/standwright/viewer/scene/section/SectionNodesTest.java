package org.standwright.viewer.scene.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.Group;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.assembly.Pose;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;

class SectionNodesTest {
    private static final Part BOARD = Part.blank("board", new Material("board", 20, 680, Grain.NONE), 400, 300);

    @Test
    void theCutFaceHasAColourOfItsOwnAndStandsWithTheRest() {
        var wood = new PhongMaterial();
        var cap = new PhongMaterial();
        var at = new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(1, 2, 3));

        var group = (Group)
                new SectionNodes(styleClass -> styleClass.equals("section-cap") ? cap : wood).node(cut(at), at, wood);

        assertThat(view(group, 0).getMaterial()).isSameAs(wood);
        assertThat(view(group, 1).getMaterial()).isSameAs(cap);
        assertThat(group.getLocalToParentTransform().transform(0, 0, 0).getX()).isEqualTo(1);
        var points = ((TriangleMesh) view(group, 1).getMesh()).getPoints();
        assertThat(points.size()).isPositive();
        for (int i = 0; i < points.size(); i += 3) {
            assertThat(points.get(i)).isBetween(98.999f, 99.001f);
        }
    }

    @Test
    void drawsSurfacesThatAreSharedFromOneMesh() {
        var nodes = new SectionNodes(styleClass -> new PhongMaterial());
        var at = new Placement(Axis.X_PLUS, Axis.Y_PLUS, Vec3.ZERO);
        var cut = cut(at);

        var one = (Group) nodes.node(cut, at, new PhongMaterial());
        var other = (Group) nodes.node(cut, at.moved(new Vec3(0, 0, 100)), new PhongMaterial());

        assertThat(view(one, 0).getMesh()).isSameAs(view(other, 0).getMesh());
    }

    private static MeshView view(Group group, int index) {
        return (MeshView) group.getChildren().get(index);
    }

    private static Piece.Cut cut(Placement at) {
        var board = new PlacedPart("board", BOARD, at);
        var assembly = new Assembly(
                "boards",
                List.of(org.standwright.assembly.Group.fixed("boards", List.of(board), List.of())),
                List.of());
        var plane = new SectionPlane(SectionPlane.Across.X, 100, SectionPlane.Kept.LOWER);
        return (Piece.Cut)
                Section.of(AssemblySolids.of(assembly, Fineness.SCREEN).solids(), Pose.closed(assembly), plane)
                        .pieces()
                        .get(0);
    }
}
