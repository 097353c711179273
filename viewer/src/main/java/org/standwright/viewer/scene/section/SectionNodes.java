package org.standwright.viewer.scene.section;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.function.Function;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Material;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import org.standwright.assembly.Placement;
import org.standwright.viewer.scene.surface.PlacementTransform;
import org.standwright.viewer.scene.surface.Surface;
import org.standwright.viewer.scene.surface.SurfaceMesh;

/** Draws the cut pieces of one section; those of equal parts that are cut alike share their meshes. */
public final class SectionNodes {
    /** Style class of the colour of cut faces. */
    public static final String CAP = "section-cap";

    private final Material cap;
    private final Map<Surface, TriangleMesh> meshes = new IdentityHashMap<>();

    /** @param paint the material of a style class */
    public SectionNodes(Function<String, Material> paint) {
        this.cap = paint.apply(CAP);
    }

    /**
     * What is left of a part and its cut face, two meshes.
     *
     * @param placement of the part in the pose that was cut
     * @param wood of what is left
     */
    public Node node(Piece.Cut cut, Placement placement, Material wood) {
        var group = new Group(view(cut.rest(), wood), view(cut.cap(), cap));
        group.getTransforms().add(PlacementTransform.of(placement));
        return group;
    }

    private MeshView view(Surface surface, Material material) {
        var view = new MeshView(meshes.computeIfAbsent(surface, SurfaceMesh::flat));
        view.setMaterial(material);
        return view;
    }
}
