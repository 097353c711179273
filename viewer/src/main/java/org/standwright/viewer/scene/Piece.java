package org.standwright.viewer.scene;

import java.util.Optional;
import javafx.geometry.Point3D;
import javafx.scene.paint.Material;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.DrawMode;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Affine;
import org.standwright.assembly.Placement;
import org.standwright.assembly.Pose;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/** One thing on the screen: its faces and its edges, which move together. */
final class Piece {
    private final MeshView faces = new MeshView();
    private final MeshView lines = new MeshView();
    private final Affine place = new Affine();
    private String label = "";
    private Tone tone = Tone.PICKED;
    private Optional<Solid> solid = Optional.empty();

    Piece() {
        lines.setDrawMode(DrawMode.LINE);
        lines.setCullFace(CullFace.NONE);
        lines.setMouseTransparent(true);
        faces.setUserData(this);
        faces.getTransforms().add(place);
        lines.getTransforms().add(place);
    }

    void draw(Scenery.Board board, Meshes meshes) {
        label = board.label();
        tone = board.tone();
        var wanted = Optional.of(board.placed().solid());
        if (!solid.equals(wanted)) {
            solid = wanted;
            draw(meshes.of(board.placed().solid()));
        }
    }

    void draw(Scenery.Bought thing, Meshes.Drawn cube) {
        label = thing.block().label();
        tone = thing.tone();
        draw(cube);
    }

    private void draw(Meshes.Drawn drawn) {
        faces.setMesh(drawn.faces());
        lines.setMesh(drawn.lines());
    }

    void place(Scenery.Board board, Pose pose) {
        put(board.placed().placement(pose));
    }

    void place(Scenery.Bought thing, Pose pose) {
        put(pose.moved(thing.group(), thing.block().box()));
    }

    private void put(Placement at) {
        Vec3 x = at.along().unit();
        Vec3 y = at.across().unit();
        Vec3 z = at.through().unit();
        Vec3 origin = at.origin();
        place.setToTransform(
                x.x(), y.x(), z.x(), origin.x(), x.y(), y.y(), z.y(), origin.y(), x.z(), y.z(), z.z(), origin.z());
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
        faces.setVisible(seen);
        lines.setVisible(seen && withEdges);
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

    Affine place() {
        return place;
    }

    String label() {
        return label;
    }

    Tone tone() {
        return tone;
    }

    /** Empty for a bought thing. */
    Optional<Solid> solid() {
        return solid;
    }
}
