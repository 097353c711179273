package org.standwright.viewer.scene;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.beans.value.ObservableValue;
import javafx.collections.MapChangeListener;
import javafx.collections.SetChangeListener;
import javafx.geometry.Rectangle2D;
import javafx.scene.AmbientLight;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.WritableImage;
import javafx.scene.input.PickResult;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.paint.Material;
import javafx.scene.transform.Rotate;
import org.standwright.viewer.scene.section.SectionPlane;

/** The window into the 3D scene. Pointer and keys change the model, and the model what is drawn. */
public final class AssemblyView extends Pane {
    private final SceneModel model;
    private final Palette palette = new Palette();
    private final Pieces pieces = new Pieces(palette);
    private final Group around = new Group();
    private final Group over = new Group();
    private final Sectioning sectioning = new Sectioning(this::cut);
    private final EyeNode eye = new EyeNode(palette);
    private final Canvas3D canvas = new Canvas3D(this, world(), eye.camera());
    private final Tempo tempo = new Tempo(() -> drawRoughly(true));
    private final Sliding sliding = new Sliding(this::place);
    private Predicate<Optional<Hit>> taker = hit -> false;

    public AssemblyView() {
        this(new SceneModel());
    }

    public AssemblyView(SceneModel model) {
        this.model = model;
        getStyleClass().add("assembly-view");
        getStylesheets().add(AssemblyView.class.getResource("scene.css").toExternalForm());
        getChildren().addAll(canvas.smooth(), canvas.rough(), palette);
        setFocusTraversable(true);
        setAccessibleText("The furniture in 3D");
        new Pointer(this, model);
        setOnKeyPressed(new Keys(model)::press);
        follow();
    }

    public SceneModel model() {
        return model;
    }

    /** Shows something else, all of it; what is the same is kept as it is. */
    public void show(Scenery scenery) {
        model.show(scenery);
    }

    /**
     * Shows other things besides the furniture; in the assembly's frame, mm.
     *
     * @param firm what nothing is seen through
     * @param translucent drawn after all else
     */
    public void add(Node firm, Node translucent) {
        around.getChildren().add(firm);
        over.getChildren().add(translucent);
    }

    /** The colour that the style sheet has for a class. */
    public ObservableValue<Color> colour(String styleClass) {
        return palette.colour(styleClass);
    }

    /** The material in which the style sheet's colour of a class is lit. */
    public Material paint(String styleClass) {
        return palette.material(new Tone(styleClass));
    }

    /** The material that has the style sheet's colour of a class in any light. */
    public Material glow(String styleClass) {
        return palette.glow(styleClass);
    }

    /** Asks this first when something is clicked, or nothing; where it says yes the click does nothing else. */
    public void setTaker(Predicate<Optional<Hit>> taker) {
        this.taker = taker;
    }

    boolean isTaken(Optional<Hit> hit) {
        return taker.test(hit);
    }

    public void fit() {
        model.fit();
    }

    /**
     * A picture of what is seen now; the view must be in a window, which need not be open.
     *
     * @param width pixels
     * @param height pixels
     */
    public WritableImage snapshot(int width, int height) {
        double wide = getWidth();
        double high = getHeight();
        resize(width, height);
        layout();
        var parameters = new SnapshotParameters();
        parameters.setViewport(new Rectangle2D(
                getBoundsInParent().getMinX(), getBoundsInParent().getMinY(), width, height));
        var image = snapshot(parameters, null);
        resize(wide, high);
        return image;
    }

    /**
     * What lies under the pointer, the machine only where nothing is seen through it.
     *
     * @param found by an event in this view
     * @param x of the event in this view
     * @param y of the event in this view
     */
    public Optional<Hit> hit(PickResult found, double x, double y) {
        return Optional.ofNullable(found.getIntersectedNode())
                .map(Node::getUserData)
                .filter(Piece.class::isInstance)
                .map(piece -> ((Piece) piece).hit(found.getIntersectedPoint()))
                .or(() -> pieces.machine(model.viewpoint().sight().getValue(), x, y));
    }

    /** The eye is being moved by hand. */
    void move() {
        tempo.move();
        drawRoughly(tempo.isSlow());
    }

    /** It no longer is. */
    void rest() {
        tempo.rest();
        drawRoughly(false);
    }

    /** Leaves out what is only for the looks, so as to keep up with the hand. */
    void drawRoughly(boolean roughly) {
        pieces.showLines(!roughly);
        canvas.draw(roughly);
    }

    private Group world() {
        var world = new Group();
        world.getTransforms().add(new Rotate(90, Rotate.X_AXIS)); // z up becomes y down
        world.getChildren().add(around);
        world.getChildren().addAll(pieces.nodes());
        world.getChildren().add(over);
        var everywhere = new AmbientLight();
        everywhere.colorProperty().bind(palette.colour("ambient-light"));
        return new Group(world, eye, everywhere);
    }

    private void follow() {
        widthProperty().subscribe(this::resized);
        heightProperty().subscribe(this::resized);
        model.sceneryProperty().subscribe(shown -> shown.ifPresent(this::build));
        model.viewpoint().sight().subscribe(sight -> look());
        model.explosionProperty().subscribe(factor -> place());
        model.sectionProperty().subscribe(this::section);
        model.open().addListener((MapChangeListener<String, Double>) change -> sliding.slideTo(model.open()));
        model.hidden().addListener((SetChangeListener<String>) change -> paint());
        model.isolated().addListener((SetChangeListener<String>) change -> paint());
        List.of(model.stepProperty(), model.seeThroughProperty(), model.edgesProperty(), model.pickedProperty())
                .forEach(property -> property.subscribe(value -> paint()));
    }

    private void resized() {
        model.viewpoint().resize(getWidth(), getHeight());
        if (model.viewpoint().isUntouched()) {
            model.fit();
        }
    }

    private void build(Scenery scenery) {
        sliding.jumpTo(model.open());
        pieces.show(scenery);
        place();
        paint();
    }

    private void place() {
        model.sceneryProperty().get().ifPresent(shown -> {
            var pose = model.pose(shown, sliding.now());
            pieces.place(shown, pose);
            model.sectionProperty()
                    .get()
                    .ifPresentOrElse(plane -> sectioning.ask(shown, pose, plane), () -> sectioning.warmUp(shown, pose));
        });
    }

    private void section(Optional<SectionPlane> wanted) {
        if (wanted.isEmpty()) {
            pieces.cut(Optional.empty());
        }
        place();
        look();
    }

    private void cut(Cuts made) {
        if (model.sectionProperty().get().isPresent()) {
            pieces.cut(Optional.of(made));
            model.sceneryProperty().get().ifPresent(shown -> pieces.place(shown, model.pose(shown, sliding.now())));
            look();
        }
    }

    private void paint() {
        pieces.paint(model);
        look();
    }

    private void look() {
        var sight = model.viewpoint().sight().getValue();
        eye.look(sight);
        pieces.face(sight, model.pickedProperty().get());
    }
}
