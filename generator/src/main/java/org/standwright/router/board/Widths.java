package org.standwright.router.board;

import org.standwright.drawing.plot.Mark;
import org.standwright.drawing.plot.MarkVisitor;

/** How wide what a mark shows is, mm; 0 where it shows no area. */
final class Widths implements MarkVisitor<Double> {
    @Override
    public Double closed(Mark.Closed closed) {
        var bounds = closed.loop().bounds();
        return Math.min(bounds.width(), bounds.height());
    }

    @Override
    public Double open(Mark.Open open) {
        return 0.0;
    }

    @Override
    public Double circle(Mark.Circle circle) {
        return circle.diameter();
    }

    @Override
    public Double spot(Mark.Spot spot) {
        return 0.0;
    }

    @Override
    public Double words(Mark.Words words) {
        return 0.0;
    }
}
