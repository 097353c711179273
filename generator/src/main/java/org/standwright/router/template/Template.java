package org.standwright.router.template;

import java.util.ArrayList;
import java.util.List;
import org.standwright.cutlist.CutLine;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.drawing.plot.Layer;
import org.standwright.drawing.plot.Mark;
import org.standwright.drawing.plot.Plot;
import org.standwright.drawing.plot.PlotDrawing;
import org.standwright.geom.Loop;
import org.standwright.geom.Vec2;
import org.standwright.part.Colour;
import org.standwright.part.Part;
import org.standwright.router.machining.Finished;
import org.standwright.router.machining.HandWork;
import org.standwright.router.machining.Mm;

/**
 * One part of a cut list at true size, finished, its origin at the plot's: the lines of both faces, and above it what it
 * is and a bar to check the scale by.
 */
public final class Template {
    private static final Colour OUTLINE = new Colour(0, 0, 0);
    private static final Colour NOTE = new Colour(90, 90, 90);
    private static final double SCALE = 100;
    private static final double LETTERS = 5;
    private static final double SMALL = 2.8;
    private static final double MARGIN = 10;
    /** Notes above a shorter part are as wide as this, mm. */
    private static final double LEAST_ROOM = 150;
    /** The longest side of a page: 14,400 units of 1/72 in (PDF reference). */
    private static final double LONGEST_PAGE = 14_400 * 25.4 / 72;

    private Template() {}

    public static Plot of(CutLine line) {
        return of(line.label(), line.count(), line.part());
    }

    /** A part and how many there are of it. */
    public static Plot of(String label, int count, Part part) {
        var layers = new Layers();
        layers.add("outline", OUTLINE, new Mark.Closed(Loop.of(Finished.outline(part))));
        var features = new TemplateFeatures(part, layers);
        part.features().forEach(feature -> feature.accept(features));
        captions(part, layers);
        var notes = notes(label, count, part);
        double room = Math.max(part.length(), LEAST_ROOM);
        var measure = TextMeasure.shipped();
        var lines = new ArrayList<String>();
        notes.forEach(note -> lines.addAll(measure.wrap(note, room, LETTERS, Weight.REGULAR)));
        double width = Math.max(part.length(), SCALE + 2);
        for (var words : lines) {
            width = Math.max(width, measure.width(words, LETTERS, Weight.REGULAR) + 1);
        }
        double y = part.width() + MARGIN;
        bar(layers, y);
        y += LETTERS + 6;
        for (int i = lines.size() - 1; i >= 0; i--) {
            layers.add("note", NOTE, new Mark.Words(lines.get(i), new Vec2(0, y), LETTERS));
            y += measure.pitch(LETTERS);
        }
        return new Plot(label + " " + part.name(), width, y, layers.all());
    }

    private static List<String> notes(String label, int count, Part part) {
        var notes = new ArrayList<String>();
        notes.add(label + " " + part.name() + ", " + count + " x "
                + part.material().name() + ", " + Mm.of(part.length()) + " x " + Mm.of(part.width()) + " x "
                + Mm.of(part.thickness()) + " mm finished");
        notes.add("show face up; layers of the bench face, dashed on paper, are seen through the part");
        notes.addAll(HandWork.of(part));
        return notes;
    }

    /** A hundred millimetres, with ends that a ruler meets. */
    private static void bar(Layers layers, double y) {
        layers.add("note", NOTE, new Mark.Open(List.of(new Vec2(0, y), new Vec2(SCALE, y))));
        layers.add("note", NOTE, new Mark.Open(List.of(new Vec2(0, y - 2), new Vec2(0, y + 2))));
        layers.add("note", NOTE, new Mark.Open(List.of(new Vec2(SCALE, y - 2), new Vec2(SCALE, y + 2))));
        layers.add("note", NOTE, new Mark.Words("check: 100 mm", new Vec2(4, y + 1.5), LETTERS));
    }

    /** What each line means, beside it where there is room. */
    private static void captions(Part part, Layers layers) {
        var room = new Room(Finished.outline(part), layers.marks());
        var captions = new Captions(part);
        for (var feature : part.features()) {
            feature.accept(captions)
                    .flatMap(caption -> room.near(caption.words(), caption.at(), SMALL))
                    .ifPresent(words -> layers.add("note", NOTE, words));
        }
    }

    /** It on paper, or where no page is so long, a word on what to do. */
    public static Drawing page(Plot plot) {
        if (Math.max(plot.width(), plot.height()) + 2 * MARGIN > LONGEST_PAGE) {
            return tooLong(plot);
        }
        return PlotDrawing.of(plot, MARGIN, Template::pen);
    }

    private static Pen pen(Layer layer) {
        if (layer.name().startsWith(TemplateFeatures.BELOW)) {
            return Pen.HIDDEN;
        }
        return layer.name().equals("centres") || layer.name().equals("note") ? Pen.THIN : Pen.OUTLINE;
    }

    private static Drawing tooLong(Plot plot) {
        var words = "'" + plot.title() + "' takes " + Mm.of(Math.max(plot.width(), plot.height()))
                + " mm with its notes, but a page of a PDF ends at " + Mm.of(LONGEST_PAGE)
                + " mm. Use the DXF or SVG file, which have no such end.";
        var shapes = new ArrayList<Shape>();
        double y = 280;
        for (var line : TextMeasure.shipped().wrap(words, 180, LETTERS, Weight.REGULAR)) {
            shapes.add(Text.level(line, new Point(15, y), LETTERS, Text.Anchor.START));
            y -= 8;
        }
        shapes.add(Line.between(15, y, 195, y, Pen.THIN));
        return new Drawing(plot.title(), 210, 297, shapes);
    }
}
