package org.standwright.export.dxf;

import java.util.List;
import org.standwright.drawing.plot.Mark;
import org.standwright.drawing.plot.MarkVisitor;
import org.standwright.geom.Loop;
import org.standwright.geom.Vec2;

/** Marks of one layer as entities of the model. */
final class Entities implements MarkVisitor<Void> {
    /** Height of capitals, which DXF measures letters by, of the letters' body. */
    private static final double CAPITALS = 0.72;

    private final Pairs pairs;
    private final String owner;
    private final String layer;

    Entities(Pairs pairs, String owner, String layer) {
        this.pairs = pairs;
        this.owner = owner;
        this.layer = layer;
    }

    @Override
    public Void closed(Mark.Closed closed) {
        polyline(closed.loop().corners(), 1);
        return null;
    }

    @Override
    public Void open(Mark.Open open) {
        polyline(open.points().stream().map(at -> new Loop.Corner(at, 0)).toList(), 0);
        return null;
    }

    @Override
    public Void circle(Mark.Circle circle) {
        begin("CIRCLE", "AcDbCircle")
                .point(10, circle.centre().x(), circle.centre().y())
                .add(40, circle.diameter() / 2);
        return null;
    }

    @Override
    public Void spot(Mark.Spot spot) {
        begin("POINT", "AcDbPoint").point(10, spot.at().x(), spot.at().y());
        return null;
    }

    @Override
    public Void words(Mark.Words words) {
        begin("TEXT", "AcDbText")
                .point(10, words.at().x(), words.at().y())
                .add(40, CAPITALS * words.size())
                .add(1, Words.text(words.words()))
                .add(100, "AcDbText");
        return null;
    }

    private void polyline(List<Loop.Corner> corners, int closed) {
        begin("LWPOLYLINE", "AcDbPolyline").add(90, corners.size()).add(70, closed);
        for (var corner : corners) {
            Vec2 at = corner.at();
            pairs.flatPoint(10, at.x(), at.y());
            if (corner.bulge() != 0) {
                pairs.bulge(corner.bulge());
            }
        }
    }

    private Pairs begin(String type, String subclass) {
        return pairs.add(0, type)
                .add(5, pairs.handle())
                .add(330, owner)
                .add(100, "AcDbEntity")
                .add(8, layer)
                .add(100, subclass);
    }
}
