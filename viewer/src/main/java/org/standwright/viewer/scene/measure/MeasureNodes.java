package org.standwright.viewer.scene.measure;

import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.paint.Material;
import javafx.scene.shape.MeshView;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.viewer.scene.surface.Surface;
import org.standwright.viewer.scene.surface.SurfaceBuilder;
import org.standwright.viewer.scene.surface.SurfaceMesh;

/** Draws picked faces and the line between them, in the frame that they were measured in. The mouse goes through both. */
public final class MeasureNodes {
    /** Style class of the colour of a picked face. */
    public static final String FACE = "picked-face";

    /** Style class of the colour of the line. */
    public static final String LINE = "measure-line";

    /** How far a picked face is drawn before the one that it covers, mm. */
    private static final double RAISED = 0.4;

    /** Width of the ends of a line, in line widths. */
    private static final double END = 3;

    private final Function<String, Material> paint;

    /** @param paint the material of a style class */
    public MeasureNodes(Function<String, Material> paint) {
        this.paint = paint;
    }

    public Node face(Face face) {
        return node(raised(face), FACE);
    }

    /** @param thickness of the line, mm */
    public Node line(Measured measured, double thickness) {
        var line = measured.line();
        var builder =
                new SurfaceBuilder().box(cube(line.from(), END * thickness)).box(cube(line.to(), END * thickness));
        if (line.length() > thickness) {
            builder.rod(line.from(), line.to(), thickness);
        }
        return node(builder.build(), LINE);
    }

    private Node node(Surface surface, String styleClass) {
        var view = new MeshView(SurfaceMesh.flat(surface));
        view.setMaterial(paint.apply(styleClass));
        view.setMouseTransparent(true);
        return view;
    }

    static Surface raised(Face face) {
        var builder = new SurfaceBuilder();
        for (var triangle : face.triangles()) {
            var by = Products.unit(triangle.normal()).times(RAISED);
            builder.triangle(
                    builder.point(triangle.a().plus(by)),
                    builder.point(triangle.b().plus(by)),
                    builder.point(triangle.c().plus(by)));
        }
        return builder.build();
    }

    private static Box3 cube(Vec3 centre, double size) {
        var half = new Vec3(size, size, size).times(0.5);
        return new Box3(centre.minus(half), centre.plus(half));
    }
}
