package org.standwright.viewer.scene;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import javafx.geometry.Point3D;
import javafx.scene.AmbientLight;
import javafx.scene.DirectionalLight;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.PerspectiveCamera;
import javafx.scene.Scene;
import javafx.scene.SceneAntialiasing;
import javafx.scene.image.PixelFormat;
import javafx.scene.paint.Color;
import javafx.scene.paint.Material;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Rotate;
import javafx.scene.transform.Translate;
import org.standwright.geom.Box3;
import org.standwright.solid.PlacedSolid;
import org.standwright.viewer.scene.surface.PlacementTransform;
import org.standwright.viewer.scene.surface.SurfaceBuilder;
import org.standwright.viewer.scene.surface.SurfaceMesh;

/** Takes pictures of nodes in the frame of an assembly, with plain colours of its own. */
public final class Studio {
    private static final int WIDTH = 1100;
    private static final int HEIGHT = 800;
    private static final double ANGLE_OF_VIEW = 28;
    private static final Map<String, String> COLOURS = Map.ofEntries(
            Map.entry("wood", "#dcb98a"),
            Map.entry("picked-face", "#2f7fd6"),
            Map.entry("measure-line", "#0b3d91"),
            Map.entry("floor-line", "#b9c0c6"),
            Map.entry("floor-line-heavy", "#8f989f"),
            Map.entry("figure", "#7d8790"),
            Map.entry("infeed", "rgba(60, 140, 80, 0.3)"),
            Map.entry("outfeed", "rgba(60, 90, 170, 0.3)"),
            Map.entry("wall-surface", "#e9e6df"),
            Map.entry("wall-stud", "#dcd8ce"),
            Map.entry("wall-casing", "#f8f8f5"),
            Map.entry("door-swing", "rgba(190, 120, 40, 0.3)"));

    private final Map<String, Material> materials = new TreeMap<>();

    /** The material of a style class. */
    public Material paint(String styleClass) {
        return materials.computeIfAbsent(
                styleClass, name -> new PhongMaterial(Color.web(COLOURS.getOrDefault(name, "#9fb0b8"))));
    }

    /** A solid where it belongs, its own place given by its transform. */
    public Node wood(PlacedSolid placed) {
        var solid = placed.solid();
        var builder = new SurfaceBuilder();
        for (int i = 0; i < solid.vertexCount(); i++) {
            builder.point(solid.vertex(i));
        }
        for (int i = 0; i < solid.triangleCount(); i++) {
            builder.triangle(solid.corner(i, 0), solid.corner(i, 1), solid.corner(i, 2));
        }
        var view = new MeshView(SurfaceMesh.flat(builder.build()));
        view.setMaterial(paint("wood"));
        view.getTransforms().add(PlacementTransform.of(placed.placement()));
        return view;
    }

    /**
     * A picture of nodes; to be called away from the screen's thread.
     *
     * @param seen what must be in it
     * @param azimuth 0 from the front, 90 from the left, degrees
     */
    public static BufferedImage picture(List<Node> nodes, Box3 seen, double azimuth, double elevation) {
        var done = new CompletableFuture<BufferedImage>();
        Platform.runLater(() -> {
            try {
                done.complete(shoot(nodes, seen, azimuth, elevation));
            } catch (RuntimeException e) {
                done.completeExceptionally(e);
            }
        });
        return done.join();
    }

    private static BufferedImage shoot(List<Node> nodes, Box3 seen, double azimuth, double elevation) {
        var world = new Group(nodes);
        world.getTransforms().add(new Rotate(90, Rotate.X_AXIS)); // z up becomes y down
        var camera = new PerspectiveCamera(true);
        camera.setVerticalFieldOfView(true);
        camera.setFieldOfView(ANGLE_OF_VIEW);
        camera.setNearClip(20);
        camera.setFarClip(40_000);
        var key = new DirectionalLight(Color.web("#aba9a3"));
        key.setDirection(new Point3D(0.55, 0.8, 1));
        var centre = seen.centre();
        var size = seen.size();
        double radius = Math.sqrt(size.x() * size.x() + size.y() * size.y() + size.z() * size.z()) / 2;
        var eye = new Group(camera, key);
        eye.getTransforms()
                .addAll(
                        new Translate(centre.x(), -centre.z(), centre.y()),
                        new Rotate(azimuth, Rotate.Y_AXIS),
                        new Rotate(-elevation, Rotate.X_AXIS),
                        new Translate(0, 0, -radius / Math.sin(Math.toRadians(ANGLE_OF_VIEW / 2))));
        var scene = new Scene(
                new Group(world, eye, new AmbientLight(Color.web("#737577"))),
                WIDTH,
                HEIGHT,
                true,
                SceneAntialiasing.BALANCED);
        scene.setFill(Color.web("#eef1f3"));
        scene.setCamera(camera);
        var image = scene.snapshot(null);
        var argb = new int[WIDTH * HEIGHT];
        image.getPixelReader().getPixels(0, 0, WIDTH, HEIGHT, PixelFormat.getIntArgbInstance(), argb, 0, WIDTH);
        var picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        picture.setRGB(0, 0, WIDTH, HEIGHT, argb, 0, WIDTH);
        return picture;
    }
}
