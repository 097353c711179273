package org.standwright.viewer.paper;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.transform.Affine;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Point;

/**
 * One drawing on paper: fitted at first, then as near as one likes. The wheel zooms to the pointer, dragging moves the
 * paper, a double click fits it again; + and - zoom, the arrows move, 0 fits. Only what is in sight is drawn, once a
 * frame at most.
 */
public final class DrawingView extends Region {
    private static final double STEP = 1.25;

    private final Canvas canvas = new Canvas();
    private final Pane over = new Pane();
    private final Affine paperToView = new Affine();
    private final ObjectProperty<Optional<Drawing>> drawing =
            new SimpleObjectProperty<>(this, "drawing", Optional.empty());
    private final ReadOnlyObjectWrapper<Sight> sight = new ReadOnlyObjectWrapper<>(this, "sight", new Sight(1, 0, 0));
    private List<Flat.Placed> shapes = List.of();
    private boolean isFitted = true;
    private Consumer<Point> clicked = point -> {};

    public DrawingView() {
        getStyleClass().add("drawing-view");
        getStylesheets().add(DrawingView.class.getResource("paper.css").toExternalForm());
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleHelp("Plus and minus zoom, the arrows move the paper, 0 shows all of it.");
        over.getTransforms().add(paperToView);
        over.setManaged(false);
        over.setPickOnBounds(false);
        var clip = new Rectangle();
        clip.widthProperty().bind(widthProperty());
        clip.heightProperty().bind(heightProperty());
        setClip(clip);
        canvas.setManaged(false);
        getChildren().addAll(canvas, over);
        drawing.subscribe(this::changed);
        new Hand(this);
    }

    private void changed(Optional<Drawing> now) {
        shapes = now.map(paper -> Flat.of(paper.shapes())).orElse(List.of());
        setAccessibleText(now.map(Drawing::title).orElse("no drawing"));
        if (!isFitted && now.isPresent()) {
            move(same -> same);
        }
        requestLayout();
    }

    /** What is shown; it stays as near as it is until it is fitted again. */
    public ObjectProperty<Optional<Drawing>> drawingProperty() {
        return drawing;
    }

    /** Where the paper is seen. */
    public ReadOnlyObjectProperty<Sight> sightProperty() {
        return sight.getReadOnlyProperty();
    }

    /** Nodes that lie over the paper, in its own frame: millimetres, y up. */
    public List<Node> over() {
        return over.getChildren();
    }

    /** @param listener gets the point of the paper that is clicked on, mm */
    public void onClicked(Consumer<Point> listener) {
        clicked = listener;
    }

    public void zoomIn() {
        zoom(STEP, getWidth() / 2, getHeight() / 2);
    }

    public void zoomOut() {
        zoom(1 / STEP, getWidth() / 2, getHeight() / 2);
    }

    /** Shows all of the paper, and goes on doing so when the view changes its size. */
    public void fit() {
        isFitted = true;
        requestLayout();
    }

    void zoom(double factor, double x, double y) {
        move(now -> now.zoomed(factor, x, y));
    }

    void push(double right, double down) {
        move(now -> now.moved(right, down));
    }

    void click(double x, double y) {
        drawing.get().ifPresent(paper -> clicked.accept(sight.get().paper(x, y)));
    }

    private void move(UnaryOperator<Sight> change) {
        drawing.get().ifPresent(paper -> {
            isFitted = false;
            sight.set(change.apply(sight.get()).held(paper, getWidth(), getHeight()));
            requestLayout();
        });
    }

    /** Draws too: so it happens once a frame, however much has changed. */
    @Override
    protected void layoutChildren() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        var on = canvas.getGraphicsContext2D();
        if (drawing.get().isEmpty() || getWidth() < 1 || getHeight() < 1) {
            on.setTransform(1, 0, 0, 1, 0, 0);
            on.clearRect(0, 0, getWidth(), getHeight());
            return;
        }
        var paper = drawing.get().get();
        if (isFitted) {
            sight.set(Sight.whole(paper, getWidth(), getHeight()));
        }
        var now = sight.get();
        paperToView.setToTransform(now.scale(), 0, now.left(), 0, -now.scale(), now.bottom());
        CanvasInk.draw(paper, shapes, now, on);
    }
}
