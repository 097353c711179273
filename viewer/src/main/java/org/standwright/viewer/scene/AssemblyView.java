package org.standwright.viewer.scene;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Point3D;
import javafx.scene.AmbientLight;
import javafx.scene.DirectionalLight;
import javafx.scene.Group;
import javafx.scene.LightBase;
import javafx.scene.Node;
import javafx.scene.PerspectiveCamera;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Box;
import javafx.scene.shape.Mesh;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Affine;
import javafx.scene.transform.Rotate;
import javafx.scene.transform.Translate;
import org.standwright.assembly.Block;
import org.standwright.assembly.Placement;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/** The window into the 3D scene: drag to turn, wheel to zoom, double click to fit. */
public final class AssemblyView extends Pane {
    private static final double ANGLE_OF_VIEW = 28;
    private static final double DEGREES_PER_PIXEL = 0.4;
    private static final double ZOOM_PER_PIXEL = 1.0025;

    private final Palette palette = new Palette();
    private final Group world = new Group();
    private final Translate toTarget = new Translate();
    private final Rotate azimuth = new Rotate(0, Rotate.Y_AXIS);
    private final Rotate elevation = new Rotate(0, Rotate.X_AXIS);
    private final Translate backwards = new Translate();

    private Optional<Scenery> shown = Optional.empty();
    private Orbit orbit = Orbit.start();
    private double mouseX;
    private double mouseY;

    public AssemblyView() {
        getStyleClass().add("assembly-view");
        world.getTransforms().add(new Rotate(90, Rotate.X_AXIS)); // z up becomes y down
        getChildren().addAll(subScene(), palette);
        widthProperty().addListener(change -> fit());
        heightProperty().addListener(change -> fit());
        setOnMousePressed(this::remember);
        setOnMouseDragged(this::turn);
        setOnScroll(this::zoom);
        setOnMouseClicked(click -> {
            if (click.getClickCount() == 2) {
                fit();
            }
        });
    }

    /** Shows something else, all of it. */
    public void show(Scenery scenery) {
        var meshes = new HashMap<Solid, Mesh>();
        world.getChildren().clear();
        scenery.boards().forEach(board -> world.getChildren().add(board(board, meshes)));
        scenery.blocks().forEach(block -> world.getChildren().add(block(block)));
        shown = Optional.of(scenery);
        fit();
    }

    /** Steps back, or comes closer, until everything is just seen. */
    public void fit() {
        if (getWidth() > 0 && getHeight() > 0) {
            double tangent = Math.tan(Math.toRadians(ANGLE_OF_VIEW / 2));
            shown.ifPresent(scenery -> look(orbit.fitted(scenery.box(), tangent, getWidth() / getHeight())));
        }
    }

    private SubScene subScene() {
        var camera = new PerspectiveCamera(true);
        camera.setVerticalFieldOfView(true);
        camera.setFieldOfView(ANGLE_OF_VIEW);
        camera.setNearClip(20);
        camera.setFarClip(40_000);
        var eye = new Group(camera, light("key-light", 0.55, 0.8, 1), light("fill-light", -1, 0.1, 0.45));
        eye.getTransforms().addAll(toTarget, azimuth, elevation, backwards);
        var everywhere = coloured(new AmbientLight(), "ambient-light");
        var scene = new SubScene(new Group(world, eye, everywhere), 0, 0, true, SceneAntialiasing.BALANCED);
        scene.setCamera(camera);
        scene.widthProperty().bind(widthProperty());
        scene.heightProperty().bind(heightProperty());
        return scene;
    }

    /** A light that goes with the eye, so that what is looked at is never dark. */
    private LightBase light(String styleClass, double x, double y, double z) {
        return coloured(new DirectionalLight(), styleClass, new Point3D(x, y, z));
    }

    private LightBase coloured(DirectionalLight light, String styleClass, Point3D direction) {
        light.setDirection(direction);
        return coloured(light, styleClass);
    }

    private LightBase coloured(LightBase light, String styleClass) {
        light.colorProperty().bind(palette.colour(styleClass));
        return light;
    }

    private Node board(Scenery.Board board, Map<Solid, Mesh> meshes) {
        var view = new MeshView(meshes.computeIfAbsent(board.solid(), MeshConverter::mesh));
        view.setMaterial(palette.material(board.tone()));
        view.getTransforms().add(transform(board.placement()));
        return view;
    }

    private Node block(Block block) {
        var size = block.box().size();
        var centre = block.box().centre();
        var box = new Box(size.x(), size.y(), size.z());
        box.getTransforms().add(new Translate(centre.x(), centre.y(), centre.z()));
        box.setMaterial(palette.material(Tone.of(block)));
        return box;
    }

    private static Affine transform(Placement placement) {
        Vec3 x = placement.along().unit();
        Vec3 y = placement.across().unit();
        Vec3 z = placement.through().unit();
        Vec3 origin = placement.origin();
        return new Affine(
                x.x(), y.x(), z.x(), origin.x(), x.y(), y.y(), z.y(), origin.y(), x.z(), y.z(), z.z(), origin.z());
    }

    private void look(Orbit from) {
        orbit = from;
        toTarget.setX(from.target().x());
        toTarget.setY(-from.target().z());
        toTarget.setZ(from.target().y());
        azimuth.setAngle(from.azimuth());
        elevation.setAngle(-from.elevation());
        backwards.setZ(-from.distance());
    }

    private void remember(MouseEvent event) {
        mouseX = event.getX();
        mouseY = event.getY();
    }

    private void turn(MouseEvent event) {
        look(orbit.turned(DEGREES_PER_PIXEL * (event.getX() - mouseX), DEGREES_PER_PIXEL * (event.getY() - mouseY)));
        remember(event);
    }

    private void zoom(ScrollEvent event) {
        look(orbit.zoomed(Math.pow(ZOOM_PER_PIXEL, event.getDeltaY())));
    }
}
