package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.drawing.Shape;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.Figure;
import org.standwright.drawing.figure.Scale;
import org.standwright.drawing.figure.Side;
import org.standwright.drawing.figure.View;
import org.standwright.unit.Units;

/** One wall seen from the room: what of it is bare, and what is put on it, dimensioned in the maker's units. */
public final class WallElevation {
    private final CleatWall walls;
    private final CleatedWall wall;
    private final WallLabels labels;
    private final TextMeasure measure;
    private final double width;

    private WallElevation(CleatWall walls, CleatedWall wall, WallLabels labels, double width, TextMeasure measure) {
        this.walls = walls;
        this.wall = wall;
        this.labels = labels;
        this.width = width;
        this.measure = measure;
    }

    /**
     * At the largest scale of the series at which it fits, its key included.
     *
     * @param wall one of them
     * @param width of the room on paper, mm
     * @param height of the room on paper, mm
     */
    public static Figure of(
            CleatWall walls, CleatedWall wall, WallLabels labels, double width, double height, TextMeasure measure) {
        var bounds = wall.outline().bounds();
        var elevation = new WallElevation(walls, wall, labels, width, measure);
        return Scale.largest(
                new Scale.Size(bounds.width(), bounds.height()),
                width,
                height,
                scale -> List.of(elevation.draw(scale)));
    }

    private Figure draw(Scale scale) {
        var strips = new StripShapes(wall, walls.design().cleat(), scale, measure);
        var surface = new WallSurface(wall, scale, measure);
        var obstacles = new ObstacleShapes(wall, scale);
        var holders = new HolderShapes(wall, holders(), strips, scale);
        var tags = new Tags(measure);
        strips.name(labels, holders.sides(), holders.areas(), tags);
        var before = Stream.of(wall.strips().stream().map(strips::area).toList(), holders.areas(), obstacles.areas())
                .flatMap(List::stream)
                .toList();
        tags.freePaper(surface::holds, before);
        obstacles.name(tags);
        tags.freePaper(
                surface::holds,
                Stream.concat(before.stream(), obstacles.keptAreas().stream()).toList());
        holders.name(labels, tags);

        var shapes = new ArrayList<Shape>(surface.bare());
        shapes.addAll(obstacles.kept());
        shapes.addAll(surface.studs());
        shapes.addAll(surface.levelLine(walls.design().levelLine()));
        shapes.addAll(obstacles.themselves());
        shapes.addAll(strips.boards());
        shapes.addAll(strips.screws());
        shapes.addAll(holders.shapes());
        shapes.add(surface.edge());
        shapes.addAll(tags.shapes());
        shapes.addAll(surface.numbers());
        shapes.addAll(new RowLabels(wall, walls.design().levelLine(), units(), scale, measure).shapes());
        return dimensioned(shapes, scale)
                .over(ElevationKey.of(wall, !holders().isEmpty(), tags.key(), width, measure), measure);
    }

    private Figure dimensioned(List<Shape> shapes, Scale scale) {
        var spans = new WallSpans(wall, units(), scale);
        return new View(shapes, measure)
                .dimension(Side.BELOW, spans.studs())
                .dimension(Side.BELOW, spans.places())
                .dimension(Side.BELOW, spans.wholeWidth())
                .dimension(Side.LEFT, spans.heights())
                .dimension(Side.LEFT, spans.wholeHeight())
                .named("Wall '" + wall.wall().name() + "' from the room, scale " + scale + ", " + units().lengthWord());
    }

    private List<HungHolder> holders() {
        return walls.holders().stream()
                .filter(holder -> holder.wall() == wall.number())
                .toList();
    }

    private Units units() {
        return walls.design().unit();
    }
}
