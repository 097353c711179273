package org.standwright.export;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.drawing.plot.Layer;
import org.standwright.drawing.plot.Mark;
import org.standwright.drawing.plot.MarkVisitor;
import org.standwright.drawing.plot.Plot;
import org.standwright.geom.Bend;
import org.standwright.geom.Vec2;

/**
 * One plot as SVG 1.1 at true size: width and height in mm, a viewBox in mm, y turned over. Each layer is a group with its
 * name and colour, each closed line one path with true arcs.
 */
public final class PlotSvgWriter {
    private PlotSvgWriter() {}

    public static void write(Plot plot, OutputStream out) throws IOException {
        var width = number(plot.width());
        var height = number(plot.height());
        var ids = new Ids();
        out.write(("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                        + "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "mm\" height=\"" + height
                        + "mm\" viewBox=\"0 0 " + width + " " + height + "\">\n"
                        + "<title>" + SvgWriter.escape(plot.title()) + "</title>\n"
                        + plot.layers().stream()
                                .map(layer -> group(layer, ids.of(layer.name()), plot.height()))
                                .collect(Collectors.joining())
                        + "</svg>\n")
                .getBytes(StandardCharsets.UTF_8));
    }

    private static String group(Layer layer, String id, double height) {
        var ink = new Ink(height, layer.colour().toString());
        return "<g id=\"" + id + "\" data-layer=\"" + SvgWriter.escape(layer.name())
                + "\" fill=\"none\" stroke=\"" + layer.colour() + "\" stroke-width=\"" + number(layer.stroke())
                + "\">\n"
                + layer.marks().stream().map(mark -> mark.accept(ink)).collect(Collectors.joining())
                + "</g>\n";
    }

    private static String number(double value) {
        return Digits.thousandths(value);
    }

    /** Names for groups, made of what every reader takes, each once. */
    private static final class Ids {
        private final Set<String> given = new HashSet<>();

        String of(String name) {
            var plain = "layer-" + name.replaceAll("[^A-Za-z0-9.]+", "-");
            var free = plain;
            for (int number = 2; !given.add(free); number++) {
                free = plain + "_" + number;
            }
            return free;
        }
    }

    private record Ink(double height, String colour) implements MarkVisitor<String> {
        /** Half of a spot's cross, mm. */
        private static final double ARM = 2;

        @Override
        public String closed(Mark.Closed closed) {
            var sides = closed.loop().sides();
            var path = new StringBuilder("M" + at(sides.get(0).from()));
            sides.forEach(side -> path.append(side(side)));
            return "<path d=\"" + path + "Z\"/>\n";
        }

        /** An arc of more than half a circle is one too: its large-arc flag says so. */
        private String side(Bend side) {
            if (!side.isArc()) {
                return "L" + at(side.to());
            }
            var radius = number(side.radius());
            int large = Math.abs(side.bulge()) > 1 ? 1 : 0;
            int clockwise = side.bulge() > 0 ? 0 : 1;
            return "A" + radius + " " + radius + " 0 " + large + " " + clockwise + " " + at(side.to());
        }

        @Override
        public String open(Mark.Open open) {
            return "<path d=\"M" + open.points().stream().map(this::at).collect(Collectors.joining("L")) + "\"/>\n";
        }

        @Override
        public String circle(Mark.Circle circle) {
            return "<circle cx=\"" + number(circle.centre().x()) + "\" cy=\""
                    + number(height - circle.centre().y()) + "\" r=\"" + number(circle.diameter() / 2) + "\"/>\n";
        }

        @Override
        public String spot(Mark.Spot spot) {
            var at = spot.at();
            return "<path d=\"M" + at(at.minus(new Vec2(ARM, 0))) + "L" + at(at.plus(new Vec2(ARM, 0))) + "M"
                    + at(at.minus(new Vec2(0, ARM))) + "L" + at(at.plus(new Vec2(0, ARM))) + "\"/>\n";
        }

        @Override
        public String words(Mark.Words words) {
            var text = SvgWriter.escape(words.words());
            double wide = TextMeasure.shipped().width(words.words(), words.size(), Weight.REGULAR);
            var length = wide > 0 ? "\" textLength=\"" + number(wide) + "\" lengthAdjust=\"spacingAndGlyphs" : "";
            return "<text x=\"" + number(words.at().x()) + "\" y=\""
                    + number(height - words.at().y()) + "\" font-family=\"" + SvgWriter.FAMILY + "\" font-size=\""
                    + number(words.size()) + length + "\" stroke=\"none\" fill=\"" + colour + "\">" + text
                    + "</text>\n";
        }

        private String at(Vec2 point) {
            return number(point.x()) + " " + number(height - point.y());
        }
    }
}
