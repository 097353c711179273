package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.assembly.Block;
import org.standwright.design.built.Stand;
import org.standwright.drawing.Group;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.StandSpans.Ends;
import org.standwright.geom.Rect;

/** Front, right side and top of a stand on one sheet, dimensioned in the maker's units. */
public final class StandViews {
    private static final double BETWEEN = 10;
    /** Height of the strip that holds a machine's name, mm. */
    private static final double NAME = 6;

    private final Stand stand;
    private final TextMeasure measure;

    private StandViews(Stand stand, TextMeasure measure) {
        this.stand = stand;
        this.measure = measure;
    }

    /** The three views at the largest scale of the series at which they fit into this room, mm. */
    public static Figure of(Stand stand, double width, double height, TextMeasure measure) {
        var size = stand.assembly().box().size();
        var frontUnderTop = new Scale.Size(size.x(), size.z() + size.y());
        return Scale.largest(frontUnderTop, width, height, new StandViews(stand, measure)::draw);
    }

    /** The side view beside the front, or below it where a stand is wide. */
    private List<Figure> draw(Scale scale) {
        var front = front(scale);
        var side = side(scale);
        // front and side share the floor line, front and top the left side: their frames are the assembly's
        var beside = new Point(front.box().x1() - side.box().x0() + BETWEEN, 0);
        var below = new Point(0, front.box().y0() - side.box().y1() - BETWEEN);
        return List.of(arranged(front, side, beside, scale), arranged(front, side, below, scale));
    }

    private Figure arranged(Figure front, Figure side, Point sideAt, Scale scale) {
        var top = top(scale);
        double topY = front.box().y1() - top.box().y0() + BETWEEN;
        var shapes = new ArrayList<Shape>();
        shapes.add(new Group(new Point(0, 0), front.shapes()));
        shapes.add(new Group(sideAt, side.shapes()));
        shapes.add(new Group(new Point(0, topY), top.shapes()));
        boolean isBeside = sideAt.y() == 0;
        double noteX = isBeside
                ? Math.max(front.box().x1(), top.box().x1()) + BETWEEN
                : side.box().x1() + 2 * BETWEEN;
        double noteY =
                isBeside ? topY + top.box().y1() : sideAt.y() + side.box().y1();
        shapes.addAll(notes(scale, noteX, noteY));
        return Figure.around(shapes, measure);
    }

    private List<Shape> notes(Scale scale, double x, double top) {
        var lines = new ArrayList<>(List.of(
                "Scale " + scale,
                "Dimensions in " + stand.design().unit().lengthWord(),
                "Dashed: hidden",
                "Third-angle projection"));
        if (stand.bays().stream().anyMatch(bay -> !bay.doors().isEmpty())) {
            lines.add("V on a door points at its hinges");
        }
        if (!PanelHole.inWorktop(stand).isEmpty()) {
            lines.add("Numbers in the top view: see the table");
        }
        var notes = new ArrayList<Shape>();
        double y = top - Letters.BODY;
        for (var line : lines) {
            notes.add(Text.level(line, new Point(x, y), Letters.BODY, Text.Anchor.START));
            y -= measure.pitch(Letters.BODY);
        }
        return notes;
    }

    private Figure front(Scale scale) {
        var spans = new StandSpans(stand, scale);
        var shapes = new ArrayList<>(StandShape.of(stand, Sight.FRONT, scale));
        shapes.addAll(names(scale));
        var view = new View(shapes, measure);
        var bays = stand.bays();
        view.dimension(Side.BELOW, spans.openings()).dimension(Side.BELOW, spans.widths());
        var left = spans.heights(bays.get(0), Ends.LEFT);
        var right = spans.heights(bays.get(bays.size() - 1), Ends.RIGHT);
        if (bays.size() > 1 || !left.equals(right)) {
            view.dimension(Side.RIGHT, right);
        }
        view.dimension(Side.RIGHT, spans.openingHeight(bays.get(bays.size() - 1)));
        view.dimension(Side.LEFT, left);
        view.dimension(Side.LEFT, spans.stack()).dimension(Side.LEFT, spans.workingHeight());
        return view.named(Sight.FRONT.words());
    }

    private Figure side(Scale scale) {
        var spans = new StandSpans(stand, scale);
        return new View(StandShape.of(stand, Sight.RIGHT, scale), measure)
                .dimension(Side.BELOW, spans.depths())
                .dimension(Side.BELOW, spans.wholeDepth())
                .dimension(Side.RIGHT, spans.woodHeight())
                .named(Sight.RIGHT.words());
    }

    private Figure top(Scale scale) {
        var spans = new StandSpans(stand, scale);
        var shapes = new ArrayList<>(StandShape.of(stand, Sight.TOP, scale));
        shapes.addAll(new TopMarks(stand, stand.worktop(), scale, measure).shapes());
        return new View(shapes, measure)
                .dimension(Side.BELOW, spans.baseAcross())
                .dimension(Side.BELOW, spans.worktopWidth())
                .dimension(Side.LEFT, spans.baseAlong())
                .dimension(Side.LEFT, spans.worktopDepth())
                .named(Sight.TOP.words());
    }

    /** Names of fronts and openings, and of the machine in its block, where they have room. */
    private List<Shape> names(Scale scale) {
        var names = new ArrayList<>(new FrontMarks(stand, scale, measure).shapes());
        stand.assembly().blocks().stream()
                .filter(block -> block.kind() == Block.Kind.MACHINE)
                .max(Comparator.comparingDouble(block -> block.box().max().z()))
                .ifPresent(machine -> names.addAll(name(machine, scale)));
        return names;
    }

    /** Under the upper edge of the machine's block. */
    private List<Shape> name(Block machine, Scale scale) {
        var seen = scale.paper(Sight.FRONT.project(machine.box()));
        var strip = new Rect(seen.x0(), seen.y1() - Math.min(NAME, seen.height()), seen.x1(), seen.y1());
        return Caption.middle(machine.label(), strip, Letters.DIMENSION, measure);
    }
}
