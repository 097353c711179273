package org.standwright.viewer.form;

import java.util.function.DoubleUnaryOperator;

/**
 * Height of a node at one width, kept until its layout is asked for again. JavaFX keeps only heights that depend on no
 * width, and measures all that is inside at every level.
 */
final class KnownHeight {
    private double width = Double.NaN;
    private double height;

    double at(double width, DoubleUnaryOperator measure) {
        if (width != this.width) {
            height = measure.applyAsDouble(width);
            this.width = width;
        }
        return height;
    }

    void forget() {
        width = Double.NaN;
    }
}
