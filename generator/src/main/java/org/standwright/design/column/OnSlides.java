package org.standwright.design.column;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.Slide;
import org.standwright.geom.Grid;

/**
 * Drawers between side-mount slides.
 *
 * <p>Clearances: box at least 6 mm below the member above and 10 mm above the one below (references 7.1, common
 * practice).
 */
record OnSlides(StandDesign design, Slide slide) implements Running {
    private static final double BELOW = 10;
    private static final double ABOVE = 6;

    @Override
    public String name() {
        return slide.name();
    }

    @Override
    public double sideSpace() {
        return slide.sideSpace();
    }

    @Override
    public double below() {
        return BELOW;
    }

    @Override
    public double above(boolean top) {
        return ABOVE;
    }

    @Override
    public double free(boolean top) {
        return ABOVE;
    }

    /** As high as its slide. */
    @Override
    public double leastBox() {
        return Exact.onTapeUp(design.unit(), line() + slide.bodyHeight() / 2);
    }

    /** To the mark of the tape below. */
    @Override
    public double boxHeight(double cell, boolean top) {
        return Exact.onTapeDown(design.unit(), cell - BELOW - ABOVE);
    }

    @Override
    public double setBack() {
        return slide.setBack();
    }

    @Override
    public double leastRoom() {
        double shortest =
                slide.lengths().stream().mapToDouble(Slide.Size::length).min().orElseThrow();
        return slide.setBack() + shortest + slide.rearSpace();
    }

    /** As long as the slide. */
    @Override
    public double boxDepth(double room) {
        return longest(room).length();
    }

    @Override
    public Optional<Slide.Size> slide(double room) {
        return Optional.of(longest(room));
    }

    @Override
    public OptionalDouble slideLine() {
        return OptionalDouble.of(line());
    }

    @Override
    public double frontScrew() {
        return line();
    }

    @Override
    public OptionalDouble rating() {
        return OptionalDouble.of(slide.rating());
    }

    @Override
    public boolean holdsClosed() {
        return slide.detent();
    }

    private double line() {
        return Exact.onTapeUp(design.unit(), Math.max(new BoxHeights(design).overGroove(), slide.bodyHeight() / 2));
    }

    private Slide.Size longest(double room) {
        double usable = room - slide.setBack() - slide.rearSpace();
        return slide.lengths().stream()
                .filter(size -> !Grid.less(usable, size.length()))
                .max(Comparator.comparingDouble(Slide.Size::length))
                .orElseThrow();
    }
}
