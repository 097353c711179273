package org.standwright.router.machining;

import org.locationtech.jts.geom.Geometry;
import org.standwright.drawing.plot.Mark;
import org.standwright.drawing.plot.MarkVisitor;

/** What a mark covers; lettering covers nothing. */
public final class MarkArea implements MarkVisitor<Geometry> {
    @Override
    public Geometry closed(Mark.Closed closed) {
        return Flat.of(closed.loop());
    }

    @Override
    public Geometry open(Mark.Open open) {
        Geometry all = Flat.nothing();
        for (int i = 1; i < open.points().size(); i++) {
            all = all.union(Flat.line(open.points().get(i - 1), open.points().get(i)));
        }
        return all;
    }

    @Override
    public Geometry circle(Mark.Circle circle) {
        return Flat.disc(circle.centre(), circle.diameter() / 2);
    }

    @Override
    public Geometry spot(Mark.Spot spot) {
        return Flat.point(spot.at());
    }

    @Override
    public Geometry words(Mark.Words words) {
        return Flat.nothing();
    }
}
