package org.standwright.part;

import java.util.Optional;
import java.util.stream.Stream;

/** What covers the four edges of a part: at x = 0, at its length, at y = 0 and at its width. */
public record Bands(Optional<Banding> x0, Optional<Banding> x1, Optional<Banding> y0, Optional<Banding> y1) {
    public static final Bands NONE = new Bands(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** The same on all four edges. */
    public static Bands around(Optional<Banding> banding) {
        return new Bands(banding, banding, banding, banding);
    }

    /** On the edge at y = 0 only. */
    public static Bands atY0(Optional<Banding> banding) {
        return new Bands(Optional.empty(), Optional.empty(), banding, Optional.empty());
    }

    /** On the edge at y = width only. */
    public static Bands atY1(Optional<Banding> banding) {
        return new Bands(Optional.empty(), Optional.empty(), Optional.empty(), banding);
    }

    /** What covers one edge. */
    public Optional<Banding> on(Edge edge) {
        return switch (edge) {
            case X0 -> x0;
            case X1 -> x1;
            case Y0 -> y0;
            case Y1 -> y1;
        };
    }

    /** What the bands add to the length, mm. */
    double alongX() {
        return Stream.of(x0, x1)
                .flatMap(Optional::stream)
                .mapToDouble(Banding::thickness)
                .sum();
    }

    /** What the bands add to the width, mm. */
    double alongY() {
        return Stream.of(y0, y1)
                .flatMap(Optional::stream)
                .mapToDouble(Banding::thickness)
                .sum();
    }
}
