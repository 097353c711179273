package org.standwright.viewer.scene;

import javafx.geometry.Point3D;
import javafx.scene.DirectionalLight;
import javafx.scene.Group;
import javafx.scene.PerspectiveCamera;
import javafx.scene.transform.Rotate;
import javafx.scene.transform.Translate;

/** The camera with the lights that go with it, so that what is looked at is never dark. In the screen's frame. */
final class EyeNode extends Group {
    /** How far in front of the target, and behind it, something is still seen; mm. */
    private static final double REACH = 30_000;

    /** Nothing closer than this share of the way to the target is seen. */
    private static final double CLOSEST = 0.02;

    private final PerspectiveCamera camera = new PerspectiveCamera(true);
    private final Translate toTarget = new Translate();
    private final Rotate azimuth = new Rotate(0, Rotate.Y_AXIS);
    private final Rotate elevation = new Rotate(0, Rotate.X_AXIS);
    private final Translate backwards = new Translate();

    EyeNode(Palette palette) {
        camera.setVerticalFieldOfView(true);
        getChildren()
                .addAll(camera, light(palette, "key-light", 0.55, 0.8, 1), light(palette, "fill-light", -1, 0.1, 0.45));
        getTransforms().addAll(toTarget, azimuth, elevation, backwards);
    }

    PerspectiveCamera camera() {
        return camera;
    }

    void look(Sight sight) {
        var orbit = sight.orbit();
        double distance = sight.distance();
        camera.setFieldOfView(sight.lens().angle());
        camera.setNearClip(Math.max(CLOSEST * distance, distance - REACH));
        camera.setFarClip(distance + REACH);
        toTarget.setX(orbit.target().x());
        toTarget.setY(-orbit.target().z());
        toTarget.setZ(orbit.target().y());
        azimuth.setAngle(orbit.azimuth());
        elevation.setAngle(-orbit.elevation());
        backwards.setZ(-distance);
    }

    private static DirectionalLight light(Palette palette, String styleClass, double x, double y, double z) {
        var light = new DirectionalLight();
        light.setDirection(new Point3D(x, y, z));
        light.colorProperty().bind(palette.colour(styleClass));
        return light;
    }
}
