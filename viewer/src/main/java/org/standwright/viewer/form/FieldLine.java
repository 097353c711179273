package org.standwright.viewer.form;

import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** A label beside its control, or above it where the line is narrow for the size of its text. */
final class FieldLine extends Region {
    /** Narrower lines put the label above; em. */
    private static final double NARROW = 21;

    private static final double LABEL = 10.5;
    private static final double GAP = 0.5;

    private final Labeled label;
    private final Region control;
    private final HBox trailing = new HBox();
    private final KnownHeight height = new KnownHeight();

    FieldLine(Labeled label, Region control) {
        this.label = label;
        this.control = control;
        trailing.getStyleClass().add("form-trailing");
        getStyleClass().add("form-line");
        setMinHeight(USE_PREF_SIZE);
        getChildren().addAll(label, control, trailing);
    }

    void addTrailing(Node... nodes) {
        trailing.getChildren().addAll(nodes);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 8 * em();
    }

    @Override
    protected double computePrefWidth(double height) {
        return 26 * em();
    }

    @Override
    protected double computePrefHeight(double width) {
        return height.at(width, this::measured);
    }

    @Override
    public void requestLayout() {
        if (height != null) { // Region asks for it before this is made
            height.forget();
        }
        super.requestLayout();
    }

    private double measured(double width) {
        var inside = inside(width);
        double controlHeight = Math.max(control.prefHeight(controlWidth(inside)), trailing.prefHeight(-1));
        double height = isNarrow(inside)
                ? label.prefHeight(inside) + controlHeight
                : Math.max(label.prefHeight(labelWidth(inside)), controlHeight);
        return snapSizeY(height) + getInsets().getTop() + getInsets().getBottom();
    }

    @Override
    protected void layoutChildren() {
        Insets insets = getInsets();
        double inside = inside(getWidth());
        double left = insets.getLeft();
        double top = insets.getTop();
        double height = getHeight() - top - insets.getBottom();
        if (isNarrow(inside)) {
            double labelHeight = label.prefHeight(inside);
            label.resizeRelocate(left, top, inside, labelHeight);
            line(left, top + labelHeight, inside, height - labelHeight);
        } else {
            double labelHeight = label.prefHeight(labelWidth(inside));
            label.resizeRelocate(left, top + Math.max(0, (height - labelHeight) / 2), labelWidth(inside), labelHeight);
            double from = labelWidth(inside) + GAP * em();
            line(left + from, top, inside - from, height);
        }
    }

    private void line(double left, double top, double width, double height) {
        double buttons = trailing.prefWidth(-1);
        double controlWidth = Math.max(0, width - buttons);
        double controlHeight = control.prefHeight(controlWidth);
        control.resizeRelocate(left, top + Math.max(0, (height - controlHeight) / 2), controlWidth, controlHeight);
        trailing.resizeRelocate(left + controlWidth, top, buttons, height);
    }

    private double controlWidth(double inside) {
        return (isNarrow(inside) ? inside : inside - labelWidth(inside) - GAP * em()) - trailing.prefWidth(-1);
    }

    private double inside(double width) {
        double given = width < 0 ? computePrefWidth(-1) : width;
        return given - getInsets().getLeft() - getInsets().getRight();
    }

    private boolean isNarrow(double inside) {
        return inside < NARROW * em();
    }

    private double labelWidth(double inside) {
        return Math.min(LABEL * em(), 0.42 * inside);
    }

    private double em() {
        return label.getFont().getSize();
    }
}
