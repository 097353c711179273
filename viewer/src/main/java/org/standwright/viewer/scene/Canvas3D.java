package org.standwright.viewer.scene;

import javafx.scene.Camera;
import javafx.scene.Group;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.layout.Pane;

/** Draws one world: with smooth edges, or roughly, which without a graphics card takes half the time. */
final class Canvas3D {
    private final Group world;
    private final Camera camera;
    private final SubScene smooth;
    private final SubScene rough;

    /** @param pane that it fills */
    Canvas3D(Pane pane, Group world, Camera camera) {
        this.world = world;
        this.camera = camera;
        this.smooth = scene(pane, SceneAntialiasing.BALANCED);
        this.rough = scene(pane, SceneAntialiasing.DISABLED);
        move(rough, smooth);
    }

    SubScene smooth() {
        return smooth;
    }

    SubScene rough() {
        return rough;
    }

    void draw(boolean roughly) {
        if (rough.isVisible() != roughly) {
            move(roughly ? smooth : rough, roughly ? rough : smooth);
        }
    }

    private void move(SubScene from, SubScene to) {
        from.setVisible(false);
        from.setCamera(null);
        from.setRoot(new Group());
        to.setRoot(world);
        to.setCamera(camera);
        to.setVisible(true);
    }

    private static SubScene scene(Pane pane, SceneAntialiasing smoothing) {
        var scene = new SubScene(new Group(), 0, 0, true, smoothing);
        scene.widthProperty().bind(pane.widthProperty());
        scene.heightProperty().bind(pane.heightProperty());
        return scene;
    }
}
