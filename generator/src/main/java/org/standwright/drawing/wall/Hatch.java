package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.wall.Obstacle;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Shape;
import org.standwright.geom.Rect;

/** What kinds of obstacle keep free is told apart by the way that it is hatched. */
enum Hatch {
    OPENING("kept free round doors and windows", true, false, false),
    WIRING("kept free round wiring", true, true, false),
    FIXTURE("kept free round pipes, beams, radiators", false, true, false),
    FURNITURE("behind what stands on the floor", false, false, true);

    /** From line to line, mm on paper. */
    private static final double APART = 2.4;

    private final String words;
    private final boolean rising;
    private final boolean falling;
    private final boolean level;

    Hatch(String words, boolean rising, boolean falling, boolean level) {
        this.words = words;
        this.rising = rising;
        this.falling = falling;
        this.level = level;
    }

    static Hatch of(Obstacle.Kind kind) {
        if (kind.isElectrical()) {
            return WIRING;
        }
        if (kind.isFurniture()) {
            return FURNITURE;
        }
        return kind == Obstacle.Kind.DOOR || kind == Obstacle.Kind.WINDOW ? OPENING : FIXTURE;
    }

    String words() {
        return words;
    }

    /** Lines over an area of paper. */
    List<Shape> over(Rect area) {
        var lines = new ArrayList<Shape>();
        if (level) {
            for (double y = area.y0() + APART / 2; y < area.y1(); y += APART) {
                lines.add(Line.between(area.x0(), y, area.x1(), y, Pen.THIN));
            }
        }
        if (rising) {
            slanting(area).forEach(lines::add);
        }
        if (falling) {
            slanting(area).map(line -> mirrored(line, area)).forEach(lines::add);
        }
        return lines;
    }

    /** At 45°, rising to the right. */
    private static Stream<Line> slanting(Rect area) {
        var lines = new ArrayList<Line>();
        double step = APART * Math.sqrt(2);
        for (double along = step / 2; along < area.width() + area.height(); along += step) {
            double x0 = Math.max(0, along - area.height());
            double x1 = Math.min(area.width(), along);
            lines.add(Line.between(
                    area.x0() + x0,
                    area.y0() + area.height() - along + x0,
                    area.x0() + x1,
                    area.y0() + area.height() - along + x1,
                    Pen.THIN));
        }
        return lines.stream();
    }

    private static Line mirrored(Line line, Rect area) {
        double twice = area.x0() + area.x1();
        return Line.between(
                twice - line.from().x(),
                line.from().y(),
                twice - line.to().x(),
                line.to().y(),
                line.pen());
    }
}
