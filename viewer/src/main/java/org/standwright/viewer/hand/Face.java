package org.standwright.viewer.hand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import org.standwright.geom.Rect;
import org.standwright.viewer.hand.change.Handle;
import org.standwright.viewer.hand.change.Move;
import org.standwright.viewer.hand.change.Picture;
import org.standwright.viewer.hand.change.Thing;

/** A picture on the screen, as large as there is room for it. */
final class Face extends Region {
    private static final double PADDING = 12;
    /** A line is taken hold of this near to it, pixels. */
    private static final double NEAR = 6;

    private final MarkNodes under = new MarkNodes();
    private final Pane things = layer();
    private final MarkNodes over = new MarkNodes();
    private final Region grip = new Region();
    private final Region ghost = new Region();
    private final Tooltip tip = new Tooltip();
    private final SizesLabel sizes = new SizesLabel();
    private Optional<Picture> picture = Optional.empty();
    private Optional<String> picked = Optional.empty();
    private Optional<Handle> hovered = Optional.empty();
    private Optional<Move> move = Optional.empty();

    Face() {
        getStyleClass().add("face");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.NODE);
        grip.getStyleClass().add("grip");
        ghost.getStyleClass().add("ghost");
        for (var region : List.of(grip, ghost)) {
            region.setManaged(false);
            region.setMouseTransparent(true);
            region.setVisible(false);
        }
        var clip = new Rectangle();
        clip.widthProperty().bind(widthProperty());
        clip.heightProperty().bind(heightProperty());
        setClip(clip);
        Tooltip.install(this, tip);
        getChildren().addAll(under, things, over, grip, ghost, sizes);
    }

    private static Pane layer() {
        var layer = new Pane();
        layer.setManaged(false);
        layer.setMouseTransparent(true);
        return layer;
    }

    void show(Optional<Picture> now) {
        picture = now;
        hovered = Optional.empty();
        requestLayout();
    }

    void pick(Optional<String> key) {
        picked = key;
        setAccessibleText(picture.map(Picture::name).orElse("nothing")
                + thing(key).map(thing -> ": " + thing.words() + " is picked").orElse(""));
        requestLayout();
    }

    /** Marks what would be taken hold of. */
    void hover(Optional<Handle> handle) {
        if (!hovered.equals(handle)) {
            hovered = handle;
            requestLayout();
        }
    }

    /** Says what is at a pixel, for where its name has no room. */
    void explain(double x, double y) {
        tip.setText(thingAt(x, y).map(Thing::words).orElse(""));
        if (tip.getText().isEmpty()) {
            tip.hide();
        }
    }

    /** Shows where something is moved to; beside it, or beside the pointer, its sizes. */
    void carry(Optional<Move> to) {
        move = to;
        if (to.isEmpty()) {
            sizes.setVisible(false);
        }
        requestLayout();
    }

    void tellSizes(Move to, boolean isRefused) {
        var seen = scale().seen(to.area());
        tellSizes(to, isRefused, seen.getCenterX(), seen.getCenterY());
    }

    void tellSizes(Move to, boolean isRefused, double x, double y) {
        sizes.show(to.sizes(), isRefused, x, y, getWidth(), getHeight());
    }

    Optional<Thing> thing(Optional<String> key) {
        return picture.stream()
                .flatMap(seen -> seen.things().stream())
                .filter(thing -> key.filter(thing.key()::equals).isPresent())
                .findFirst();
    }

    List<Thing> things() {
        return picture.map(Picture::things).orElse(List.of());
    }

    /** The smallest thing at a pixel. */
    Optional<Thing> thingAt(double x, double y) {
        double right = scale().mmAt(x);
        double up = scale().heightAt(y);
        return things().stream()
                .filter(thing -> holds(thing.area(), right, up, 0))
                .min(Comparator.comparingDouble(thing -> thing.area().area()));
    }

    /** What is taken hold of at a pixel: a line near to it before an area around it. */
    Optional<Handle> handleAt(double x, double y) {
        double right = scale().mmAt(x);
        double up = scale().heightAt(y);
        double near = Math.min(NEAR / scale().factor(), thinnest(right, up) / 4);
        return handles()
                .filter(handle -> holds(handle.area(), right, up, isLine(handle) ? near : 0))
                .min(Comparator.comparingDouble(handle -> thickness(handle.area())));
    }

    /** Of the areas around a point, so that small ones can be taken hold of as a whole too, mm. */
    private double thinnest(double x, double y) {
        return handles()
                .filter(handle -> handle.way() == Handle.Way.ANYWHERE)
                .map(Handle::area)
                .filter(area -> holds(area, x, y, 0))
                .mapToDouble(Face::thickness)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private Stream<Handle> handles() {
        return picture.stream().flatMap(seen -> seen.handles().stream());
    }

    /** By its words. */
    Optional<Handle> handle(String words) {
        return handles().filter(handle -> handle.words().equals(words)).findFirst();
    }

    private boolean isLine(Handle handle) {
        return handle.way() != Handle.Way.ANYWHERE && thickness(handle.area()) * scale().factor() < 2 * NEAR;
    }

    private static double thickness(Rect area) {
        return Math.min(area.width(), area.height());
    }

    /** @param near how far beyond its longer edges, mm */
    private static boolean holds(Rect area, double x, double y, double near) {
        double across = area.width() < area.height() ? near : 0;
        double along = area.width() < area.height() ? 0 : near;
        return x >= area.x0() - across && x <= area.x1() + across && y >= area.y0() - along && y <= area.y1() + along;
    }

    Scale scale() {
        var bounds = picture.map(Picture::bounds).orElse(new Rect(0, 0, 1, 1));
        var fitted = Scale.fitted(bounds, getWidth() - 2 * PADDING, getHeight() - 2 * PADDING);
        return new Scale(fitted.factor(), fitted.left() + PADDING, fitted.floor() + PADDING);
    }

    @Override
    protected void layoutChildren() {
        things.resize(getWidth(), getHeight());
        var scale = scale();
        under.show(picture.map(Picture::under).orElse(List.of()), scale);
        over.show(picture.map(Picture::over).orElse(List.of()), scale);
        layThings(scale);
        lay(grip, hovered.filter(handle -> move.isEmpty()).map(Handle::area), scale);
        lay(ghost, move.map(Move::area), scale);
    }

    private void layThings(Scale scale) {
        var now = things();
        var nodes = new ArrayList<>(things.getChildren());
        while (nodes.size() < now.size()) {
            nodes.add(new ThingNode());
        }
        if (nodes.size() != things.getChildren().size() || nodes.size() > now.size()) {
            things.getChildren().setAll(nodes.subList(0, now.size()));
            things.applyCss(); // letters must be known before words are fitted
        }
        for (int i = 0; i < now.size(); i++) {
            boolean isPicked = picked.filter(now.get(i).key()::equals).isPresent();
            ((ThingNode) things.getChildren().get(i)).show(now.get(i), scale, isPicked);
        }
    }

    private static void lay(Region region, Optional<Rect> area, Scale scale) {
        region.setVisible(area.isPresent());
        area.map(scale::seen)
                .ifPresent(seen -> region.resizeRelocate(
                        seen.getMinX(), seen.getMinY(), Math.max(3, seen.getWidth()), Math.max(3, seen.getHeight())));
    }
}
