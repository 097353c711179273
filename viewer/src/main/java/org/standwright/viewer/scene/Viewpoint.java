package org.standwright.viewer.scene;

import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/** Where the eye is, and its lens. Until it is moved by hand it keeps everything in the picture. */
public final class Viewpoint {
    private final ObjectProperty<Orbit> orbit = new SimpleObjectProperty<>(this, "orbit", Orbit.start());
    private final ObjectProperty<Lens> lens = new SimpleObjectProperty<>(this, "lens", Lens.PERSPECTIVE);
    private final ObjectProperty<Picture> picture = new SimpleObjectProperty<>(this, "picture", new Picture(1, 1));
    private final ObservableValue<Sight> sight = Bindings.createObjectBinding(this::look, orbit, lens, picture);
    private Optional<Orbit> fitted = Optional.empty();

    /** The size of what is drawn on, pixels. */
    private record Picture(double width, double height) {}

    public ObjectProperty<Orbit> orbitProperty() {
        return orbit;
    }

    public ObjectProperty<Lens> lensProperty() {
        return lens;
    }

    /** All of it. */
    public ObservableValue<Sight> sight() {
        return sight;
    }

    public void swapLens() {
        lens.set(lens.get() == Lens.PERSPECTIVE ? Lens.PARALLEL : Lens.PERSPECTIVE);
    }

    /** Steps back, or comes closer, until the box is just seen. */
    public void fit(Box3 box) {
        var size = picture.get();
        orbit.set(orbit.get().fitted(box, lens.get(), size.width() / size.height()));
        fitted = Optional.of(orbit.get());
    }

    /** Looks at the whole box from a standard direction. */
    public void seeFrom(StandardView view, Box3 box) {
        orbit.set(orbit.get().seenFrom(view));
        fit(box);
    }

    public void turn(double byAzimuth, double byElevation) {
        orbit.set(orbit.get().turned(byAzimuth, byElevation));
    }

    /** Moves what is seen along with the hand, pixels. */
    public void pan(double right, double down) {
        double perPixel = look().perPixel();
        orbit.set(orbit.get().moved(-right * perPixel, down * perPixel));
    }

    /** Nearer by a factor above 1; the point stays where it is in the picture. */
    public void zoom(double factor, Vec3 fixed) {
        orbit.set(orbit.get().zoomed(factor, fixed));
    }

    /** Whether it is still as the last fit left it, or never was moved. */
    boolean isUntouched() {
        return fitted.map(last -> last.equals(orbit.get())).orElse(true);
    }

    /** The picture has another size, pixels. */
    void resize(double width, double height) {
        picture.set(new Picture(Math.max(1, width), Math.max(1, height)));
    }

    private Sight look() {
        return new Sight(
                orbit.get(), lens.get(), picture.get().width(), picture.get().height());
    }
}
