package org.standwright.viewer.scene.tools;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.standwright.viewer.scene.AssemblyView;
import org.standwright.viewer.scene.SceneModel;
import org.standwright.viewer.scene.Scenery;
import org.standwright.viewer.work.Desk;

/** The furniture in 3D with its tools; where the screen cannot draw in 3D, it says so and where else to look. */
public final class ScenePane extends BorderPane {
    /** Tape steps that a key moves a cut by. */
    private static final int STEPS = 10;

    private final Desk desk;
    private final SceneModel model = new SceneModel();
    private final AroundModel around = new AroundModel();
    private final SectionModel section = new SectionModel(model);
    private final MeasureModel measure = new MeasureModel(model);

    /** @param save takes pictures that are to be saved */
    public ScenePane(Desk desk, Consumer<WritableImage> save) {
        this.desk = desk;
        getStyleClass().add("scene-pane");
        getStylesheets().add(ScenePane.class.getResource("tools.css").toExternalForm());
        if (!canShow3d()) {
            setCenter(insteadOf3d());
            return;
        }
        var view = new AssemblyView(model);
        var seen = new StackPane(view, reading());
        seen.getStyleClass().add("seen");
        Runnable picture = () -> save.accept(Shot.of(seen));
        setTop(new VBox(new Strip(model, around, section, measure, picture), lines()));
        setCenter(seen);
        view.setTaker(measure::take);
        view.addEventHandler(KeyEvent.KEY_PRESSED, keys(picture)::press);
        new MeasureMarks(view, measure);
        show(view, new Surroundings(view, around));
    }

    private void show(AssemblyView view, Surroundings surroundings) {
        model.pickedProperty().bindBidirectional(desk.pickedProperty());
        view.visibleProperty().bind(desk.builtProperty().map(Optional::isPresent));
        desk.builtProperty()
                .subscribe(shown -> shown.ifPresent(built -> {
                    view.show(Scenery.of(built.furniture().assembly(), built.solids()));
                    surroundings.around(built.furniture());
                }));
    }

    public SceneModel model() {
        return model;
    }

    /** Whether this screen's driver can draw in 3D. */
    public static boolean canShow3d() {
        return Platform.isSupported(ConditionalFeature.SCENE3D);
    }

    /** What the tools that are on can be told. */
    private Node lines() {
        var lines = new FlowPane(new SectionBar(section, desk.shownUnits()), new BoardBar(around, desk.shownUnits()));
        lines.getStyleClass().add("lines");
        return lines;
    }

    private Label reading() {
        var reading = new Label();
        reading.getStyleClass().add("reading");
        reading.setMouseTransparent(true);
        reading.visibleProperty().bind(measure.onProperty());
        reading.textProperty()
                .bind(measure.readingProperty()
                        .flatMap(read -> desk.shownUnits().map(read::words)));
        return reading;
    }

    private ToolKeys keys(Runnable picture) {
        return new ToolKeys()
                .on(KeyCode.C, picture)
                .swaps(KeyCode.G, around.floorProperty())
                .swaps(KeyCode.S, around.personProperty())
                .swaps(KeyCode.B, around.feedProperty())
                .swaps(KeyCode.W, around.wallProperty())
                .swaps(KeyCode.M, measure.onProperty())
                .on(KeyCode.ESCAPE, measure::cancel)
                .swaps(KeyCode.X, section.onProperty())
                .onShift(KeyCode.X, section::keepOtherSide)
                .on(KeyCode.COMMA, () -> section.move(-step()))
                .on(KeyCode.PERIOD, () -> section.move(step()));
    }

    private double step() {
        return STEPS * desk.shownUnits().getValue().tapeStep();
    }

    private static Node insteadOf3d() {
        var words = new Label("The graphics driver of this screen cannot draw in 3D. The other panes show the same"
                + " design in 2D. Update the driver, or start with -Dprism.forceGPU=true to use one that is not on"
                + " JavaFX's list.");
        words.setWrapText(true);
        words.getStyleClass().add("instead-of-3d");
        return new StackPane(words);
    }
}
