package org.standwright.drawing.holder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.wall.Cleat;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.figure.Scale;
import org.standwright.drawing.figure.Sight;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Bevel;
import org.standwright.part.Edge;
import org.standwright.part.Face;
import org.standwright.part.Part;

/** What a holder hangs on, seen from its right side: the strip that its hanger sits on, and the wall's surface. */
record Neighbours(EqualHolders holder, Cleat cleat, Scale scale) {
    /** Between the strokes that mark the wall, and how far they reach into it, mm on paper. */
    private static final double STROKE = 1.5;

    List<Shape> shapes() {
        var shapes = new ArrayList<Shape>();
        shapes.add(strip());
        double from = scale.paper(Math.min(holder.box().min().z(), -cleat.height()));
        double to = scale.paper(holder.box().max().z());
        shapes.add(Line.between(0, from, 0, to, Pen.THIN));
        for (double y = from; y + STROKE <= to; y += STROKE) {
            shapes.add(Line.between(0, y, STROKE, y + STROKE, Pen.THIN));
        }
        return shapes;
    }

    private Shape strip() {
        var width = holder.made().back().width();
        var part = Part.blank("strip", cleat.sheet().material(), width, cleat.height())
                .with(new Bevel(Edge.Y1, Face.BENCH, cleat.tilt(), cleat.bevelDepth()));
        var placement = new Placement(Axis.X_PLUS, Axis.Z_PLUS, new Vec3(0, 0, -cleat.height()));
        var corners = new Silhouette(new PlacedPart("strip", part, placement), Sight.RIGHT)
                .corners().stream()
                        .map(corner -> new Point(scale.paper(corner.x()), scale.paper(corner.y())))
                        .toList();
        return new Polygon(corners, Optional.of(Pen.THIN), Fill.PALE);
    }
}
