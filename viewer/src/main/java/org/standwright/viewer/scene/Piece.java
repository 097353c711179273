package org.standwright.viewer.scene;

import java.util.Optional;
import javafx.geometry.Point3D;
import javafx.scene.paint.Material;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.DrawMode;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.transform.Affine;
import org.standwright.assembly.Placement;
import org.standwright.assembly.Pose;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;
import org.standwright.viewer.scene.surface.PlacementTransform;

/** One thing on the screen: its faces and its edges, which move together. */
final class Piece {
    private static final Meshes.Drawn NOTHING = new Meshes.Drawn(new TriangleMesh(), new TriangleMesh());

    private final MeshView faces = new MeshView();
    private final MeshView lines = new MeshView();
    private final Affine place = new Affine();
    private String label = "";
    private Tone tone = Tone.PICKED;
    private Optional<Solid> solid = Optional.empty();
    private final MeshView cap = new MeshView();
    private Meshes.Drawn whole = NOTHING;
    private Part part = Part.WHOLE;
    private boolean seen;
    private boolean withEdges;

    /** How much of it a section leaves. */
    private enum Part {
        WHOLE,
        CUT,
        NONE
    }

    Piece() {
        lines.setDrawMode(DrawMode.LINE);
        lines.setCullFace(CullFace.NONE);
        lines.setMouseTransparent(true);
        faces.setUserData(this);
        faces.getTransforms().add(place);
        lines.getTransforms().add(place);
        cap.setUserData(this);
        cap.getTransforms().add(place);
    }

    void draw(Scenery.Board board, Meshes meshes) {
        label = board.label();
        tone = board.tone();
        var wanted = Optional.of(board.placed().solid());
        if (!solid.equals(wanted)) {
            solid = wanted;
            whole(meshes.of(board.placed().solid()));
        }
    }

    void draw(Scenery.Bought thing, Meshes.Drawn cube) {
        label = thing.block().label();
        tone = thing.tone();
        whole(cube);
    }

    private void whole(Meshes.Drawn drawn) {
        whole = drawn;
        if (part != Part.CUT) {
            draw(drawn);
        }
    }

    /** All of it is there. */
    void keep() {
        keep(Part.WHOLE, whole);
    }

    /** A section leaves this much of it. */
    void keep(Cuts.Cut cut) {
        cap.setMesh(cut.cap());
        keep(Part.CUT, cut.rest());
    }

    /** A section cuts it away. */
    void leaveOut() {
        keep(Part.NONE, whole);
    }

    private void keep(Part left, Meshes.Drawn drawn) {
        part = left;
        draw(drawn);
        show(seen, withEdges);
    }

    private void draw(Meshes.Drawn drawn) {
        faces.setMesh(drawn.faces());
        lines.setMesh(drawn.lines());
    }

    void place(Scenery.Board board, Pose pose) {
        put(board.placed().placement(pose));
    }

    /** @param kept how much of its box there is to see */
    void place(Optional<Box3> kept) {
        kept.ifPresentOrElse(
                box -> {
                    put(box);
                    keep();
                },
                this::leaveOut);
    }

    private void put(Placement at) {
        place.setToTransform(PlacementTransform.of(at));
    }

    private void put(Box3 box) {
        var size = box.size();
        var min = box.min();
        place.setToTransform(size.x(), 0, 0, min.x(), 0, size.y(), 0, min.y(), 0, 0, size.z(), min.z());
    }

    void paint(Material surface, Material edge) {
        faces.setMaterial(surface);
        lines.setMaterial(edge);
    }

    void show(boolean seen, boolean withEdges) {
        this.seen = seen;
        this.withEdges = withEdges;
        boolean there = seen && part != Part.NONE;
        faces.setVisible(there);
        lines.setVisible(there && withEdges);
        cap.setVisible(there && part == Part.CUT);
    }

    boolean isCut() {
        return part == Part.CUT;
    }

    /** @param point in its own frame */
    Hit hit(Point3D point) {
        var at = faces.localToParent(point);
        return new Hit(label, new Vec3(at.getX(), at.getY(), at.getZ()));
    }

    /** Around it where it is now. */
    Box3 box() {
        var box = faces.getBoundsInParent();
        return new Box3(
                new Vec3(box.getMinX(), box.getMinY(), box.getMinZ()),
                new Vec3(box.getMaxX(), box.getMaxY(), box.getMaxZ()));
    }

    /** Drawn after what is farther away, and after what it contains, for glass to be looked through. */
    void order(Vec3 eye) {
        var min = box().min();
        var max = box().max();
        var from = new Point3D(eye.x(), eye.y(), eye.z());
        faces.setViewOrder(from.distance(
                between(min.x(), max.x(), eye.x()),
                between(min.y(), max.y(), eye.y()),
                between(min.z(), max.z(), eye.z())));
    }

    private static double between(double least, double most, double value) {
        return Math.max(least, Math.min(most, value));
    }

    MeshView faces() {
        return faces;
    }

    MeshView lines() {
        return lines;
    }

    /** The face that a section leaves of it. */
    MeshView cap() {
        return cap;
    }

    Affine place() {
        return place;
    }

    String label() {
        return label;
    }

    Tone tone() {
        return tone;
    }

    /** Empty for a bought thing, and while it is cut. */
    Optional<Solid> solid() {
        return isCut() ? Optional.empty() : solid;
    }
}
