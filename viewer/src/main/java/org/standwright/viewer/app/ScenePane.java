package org.standwright.viewer.app;

import javafx.scene.layout.BorderPane;
import org.standwright.assembly.Pose;
import org.standwright.viewer.scene.AssemblyView;
import org.standwright.viewer.scene.Scenery;
import org.standwright.viewer.work.Desk;

/** The furniture in 3D. */
final class ScenePane extends BorderPane {
    ScenePane(Desk desk) {
        var view = new AssemblyView();
        setCenter(view);
        desk.builtProperty()
                .subscribe(shown -> shown.ifPresent(built -> view.show(
                        Scenery.of(built.solids(), Pose.closed(built.furniture().assembly())))));
    }
}
