package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.Scale;
import org.standwright.drawing.figure.Spread;
import org.standwright.unit.Units;

/** Names of the rows at the right of the wall with their heights as ± from the level line, and the level line's own name. */
record RowLabels(CleatedWall wall, double levelLine, Units units, Scale scale, TextMeasure measure) {
    private static final double SIZE = 2.5;
    private static final double GAP = 1;
    private static final double LEADER = 4;

    private record Label(double height, String words, Pen pen) {}

    List<Shape> shapes() {
        var labels = labels();
        double pitch = measure.pitch(SIZE);
        var places = Spread.apart(
                labels.stream().map(label -> scale.paper(label.height)).toList(),
                Collections.nCopies(labels.size(), pitch));
        double from = scale.paper(wall.outline().bounds().x1()) + GAP;
        var shapes = new ArrayList<Shape>();
        for (int i = 0; i < labels.size(); i++) {
            var label = labels.get(i);
            double y = places.get(i);
            shapes.add(Line.between(from, scale.paper(label.height), from + LEADER, y, label.pen));
            var at = new Point(from + LEADER + GAP / 2, y - measure.above(SIZE) / 2);
            shapes.add(Text.level(label.words, at, SIZE, Text.Anchor.START));
        }
        return shapes;
    }

    /** From the lowest; rows without a strip on this wall are left out. */
    private List<Label> labels() {
        var labels = new ArrayList<Label>();
        if (!Crossing.level(wall.outline(), levelLine).isEmpty()) {
            labels.add(new Label(levelLine, "level line", Pen.DIMENSION));
        }
        wall.rows().stream().filter(row -> !row.strips().isEmpty()).forEach(row -> {
            var words = "row " + row.number() + "  " + SignedHeight.of(row.height() - levelLine, units);
            labels.add(new Label(row.height(), words, Pen.DIMENSION));
        });
        labels.sort(Comparator.comparingDouble(Label::height));
        return labels;
    }
}
