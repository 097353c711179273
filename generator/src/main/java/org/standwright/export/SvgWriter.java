package org.standwright.export;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Group;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.ShapeVisitor;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;

/**
 * One drawing as SVG 1.1: width and height in mm, a viewBox in mm, so that nothing inside needs a factor. y is turned
 * over, text stays text, each as wide as the layout was made for: a viewer that lacks the typeface named first squeezes
 * or stretches another one.
 */
public final class SvgWriter {
    static final String FAMILY = "Liberation Sans, Arial, Helvetica, sans-serif";

    private SvgWriter() {}

    public static void write(Drawing drawing, OutputStream out) throws IOException {
        var width = number(drawing.width());
        var height = number(drawing.height());
        var ink = new Ink(drawing.height());
        out.write(("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                        + "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "mm\" height=\"" + height
                        + "mm\" viewBox=\"0 0 " + width + " " + height + "\">\n"
                        + "<title>" + escape(drawing.title()) + "</title>\n"
                        + "<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"white\"/>\n"
                        + "<g font-family=\"" + FAMILY + "\">\n"
                        + drawing.shapes().stream()
                                .map(shape -> shape.accept(ink))
                                .collect(Collectors.joining())
                        + "</g>\n</svg>\n")
                .getBytes(StandardCharsets.UTF_8));
    }

    private static String number(double value) {
        return Digits.thousandths(value);
    }

    static String escape(String words) {
        var visible = words.codePoints()
                .map(c ->
                        Character.isISOControl(c) || c >= 0xd800 && c <= 0xdfff || c >= 0xfffe && c <= 0xffff ? ' ' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return visible.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** Elements of shapes in a frame whose y = 0 lies {@code height} below the top of the paper. */
    private record Ink(double height) implements ShapeVisitor<String> {
        @Override
        public String line(Line line) {
            var from = line.from();
            var to = line.to();
            return "<path d=\"M" + at(from) + "L" + at(to) + "\" fill=\"none\"" + stroke(line.pen()) + "/>\n";
        }

        @Override
        public String arc(Arc arc) {
            var path = new StringBuilder("M" + at(arc.at(0)));
            for (int half = 1; half <= 2; half++) {
                var radius = number(arc.radius());
                path.append("A").append(radius).append(" ").append(radius).append(" 0 0 ");
                path.append(arc.sweep() > 0 ? 0 : 1).append(" ").append(at(arc.at(half * arc.sweep() / 2)));
            }
            return "<path d=\"" + path + "\" fill=\"none\"" + stroke(arc.pen()) + "/>\n";
        }

        @Override
        public String polygon(Polygon polygon) {
            var points = polygon.points().stream().map(this::at).collect(Collectors.joining(" "));
            return "<polygon points=\"" + points + "\" fill=\"" + colour(polygon.fill()) + "\""
                    + polygon.pen().map(Ink::stroke).orElse("") + "/>\n";
        }

        @Override
        public String text(Text text) {
            var x = number(text.at().x());
            var y = number(height - text.at().y());
            var turn = text.heading() == Text.Heading.UPWARD ? " transform=\"rotate(-90 " + x + " " + y + ")\"" : "";
            var anchor = text.anchor().name().toLowerCase(Locale.ROOT);
            var weight = text.weight() == Weight.BOLD ? " font-weight=\"bold\"" : "";
            return "<text x=\"" + x + "\" y=\"" + y + "\" font-size=\"" + number(text.size()) + "\" text-anchor=\""
                    + anchor + "\"" + weight + length(text) + turn + ">" + escape(text.words()) + "</text>\n";
        }

        /** So wide that another typeface does not run into what stands beside it; nothing for no words. */
        private static String length(Text text) {
            double wide = TextMeasure.shipped().width(text.words(), text.size(), text.weight());
            return wide > 0 ? " textLength=\"" + number(wide) + "\" lengthAdjust=\"spacingAndGlyphs\"" : "";
        }

        @Override
        public String group(Group group) {
            var inner = group.shapes().stream().map(shape -> shape.accept(this)).collect(Collectors.joining());
            return "<g transform=\"translate(" + number(group.shift().x()) + " "
                    + number(-group.shift().y()) + ")\">\n" + inner + "</g>\n";
        }

        private String at(Point point) {
            return number(point.x()) + " " + number(height - point.y());
        }

        private static String stroke(Pen pen) {
            return " stroke=\"black\" stroke-width=\"" + number(pen.width()) + "\"" + dashes(pen.dashes());
        }

        private static String dashes(List<Double> dashes) {
            return dashes.isEmpty()
                    ? ""
                    : " stroke-dasharray=\""
                            + dashes.stream().map(SvgWriter::number).collect(Collectors.joining(" ")) + "\"";
        }

        private static String colour(Fill fill) {
            if (fill.brightness().isEmpty()) {
                return "none";
            }
            long level = Math.round(255 * fill.brightness().getAsDouble());
            return String.format(Locale.ROOT, "#%02x%02x%02x", level, level, level);
        }
    }
}
