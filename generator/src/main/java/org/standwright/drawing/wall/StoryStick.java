package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.built.Row;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.Figure;
import org.standwright.unit.Units;

/**
 * A batten with a mark at every row, held with its zero on the level line: every row then has one height on every wall,
 * whatever the floor does.
 *
 * @param marks from the lowest row
 */
public record StoryStick(List<Mark> marks, Units units) {
    public StoryStick {
        marks = List.copyOf(marks);
    }

    /**
     * One row.
     *
     * @param edge the strips' high edge above the level line, mm
     * @param lower the strips' lower edge above the level line, mm
     * @param step from the row below, mm
     */
    public record Mark(int row, double edge, double lower, Optional<Double> step) {}

    /** Of every row that has a strip on some wall. */
    public static StoryStick of(CleatWall walls) {
        double height = walls.design().cleat().height();
        double level = walls.design().levelLine();
        var rows = walls.walls().stream()
                .flatMap(wall -> wall.rows().stream())
                .filter(row -> !row.strips().isEmpty())
                .map(row -> new Row(row.number(), row.height(), List.of()))
                .distinct()
                .sorted(Comparator.comparingDouble(Row::height))
                .toList();
        var marks = new ArrayList<Mark>();
        for (int i = 0; i < rows.size(); i++) {
            var row = rows.get(i);
            double edge = row.height() - level;
            var step = i == 0
                    ? Optional.<Double>empty()
                    : Optional.of(row.height() - rows.get(i - 1).height());
            marks.add(new Mark(row.number(), edge, edge - height, step));
        }
        return new StoryStick(marks, walls.design().unit());
    }

    /** The stick with its marks at the largest scale of the series at which it fits. */
    public Figure figure(double width, double height, TextMeasure measure) {
        return StickShapes.of(this, width, height, measure);
    }
}
