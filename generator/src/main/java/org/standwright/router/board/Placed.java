package org.standwright.router.board;

import java.util.function.UnaryOperator;
import org.standwright.drawing.plot.Mark;
import org.standwright.drawing.plot.MarkVisitor;
import org.standwright.geom.Vec2;

/** Marks where a rigid motion takes them; it may mirror. Lettering stays level. */
record Placed(UnaryOperator<Vec2> image) implements MarkVisitor<Mark> {
    @Override
    public Mark closed(Mark.Closed closed) {
        return new Mark.Closed(closed.loop().moved(image));
    }

    @Override
    public Mark open(Mark.Open open) {
        return new Mark.Open(open.points().stream().map(image).toList());
    }

    @Override
    public Mark circle(Mark.Circle circle) {
        return new Mark.Circle(image.apply(circle.centre()), circle.diameter());
    }

    @Override
    public Mark spot(Mark.Spot spot) {
        return new Mark.Spot(image.apply(spot.at()));
    }

    @Override
    public Mark words(Mark.Words words) {
        return new Mark.Words(words.words(), image.apply(words.at()), words.size());
    }
}
