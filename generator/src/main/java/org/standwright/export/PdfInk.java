package org.standwright.export;

import static org.standwright.export.PdfWriter.points;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Group;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.ShapeVisitor;
import org.standwright.drawing.Text;

/** Puts shapes on one page of a PDF. Arcs become cubic curves of at most 45°, off by less than 1e-5 of the radius. */
final class PdfInk implements ShapeVisitor<Void> {
    private static final double CURVE = 45;

    private final PDPageContentStream content;
    private final PdfFonts fonts;

    PdfInk(PDPageContentStream content, PdfFonts fonts) {
        this.content = content;
        this.fonts = fonts;
    }

    /** Steps that write to the page. */
    private interface Steps {
        void run() throws IOException;
    }

    private static Void put(Steps steps) {
        try {
            steps.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return null;
    }

    @Override
    public Void line(Line line) {
        return put(() -> {
            use(line.pen());
            moveTo(line.from());
            lineTo(line.to());
            content.stroke();
        });
    }

    @Override
    public Void arc(Arc arc) {
        return put(() -> {
            use(arc.pen());
            int curves = (int) Math.ceil(Math.abs(arc.sweep()) / CURVE);
            double step = arc.sweep() / curves;
            moveTo(arc.at(0));
            for (int i = 0; i < curves; i++) {
                curve(arc, i * step, (i + 1) * step);
            }
            content.stroke();
        });
    }

    @Override
    public Void polygon(Polygon polygon) {
        return put(() -> {
            if (polygon.fill().brightness().isPresent()) {
                content.setNonStrokingColor((float) polygon.fill().brightness().getAsDouble());
                outline(polygon);
                content.fill();
                content.setNonStrokingColor(0f);
            }
            if (polygon.pen().isPresent()) {
                use(polygon.pen().get());
                outline(polygon);
                content.stroke();
            }
        });
    }

    @Override
    public Void text(Text text) {
        return put(() -> {
            var words = fonts.printable(text.words());
            double width = fonts.width(words, text.size(), text.weight());
            double back = switch (text.anchor()) {
                case START -> 0;
                case MIDDLE -> width / 2;
                case END -> width;
            };
            content.beginText();
            content.setFont(fonts.of(text.weight()), points(text.size()));
            content.setTextMatrix(
                    text.heading() == Text.Heading.LEVEL
                            ? new Matrix(
                                    1,
                                    0,
                                    0,
                                    1,
                                    points(text.at().x() - back),
                                    points(text.at().y()))
                            : new Matrix(
                                    0,
                                    1,
                                    -1,
                                    0,
                                    points(text.at().x()),
                                    points(text.at().y() - back)));
            content.showText(words);
            content.endText();
        });
    }

    @Override
    public Void group(Group group) {
        return put(() -> {
            content.saveGraphicsState();
            var shift = group.shift();
            content.transform(new Matrix(1, 0, 0, 1, points(shift.x()), points(shift.y())));
            group.shapes().forEach(shape -> shape.accept(this));
            content.restoreGraphicsState();
        });
    }

    private void use(Pen pen) throws IOException {
        var dashes = new float[pen.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = points(pen.dashes().get(i));
        }
        content.setLineWidth(points(pen.width()));
        content.setLineDashPattern(dashes, 0);
    }

    private void outline(Polygon polygon) throws IOException {
        moveTo(polygon.points().get(0));
        for (var point : polygon.points().subList(1, polygon.points().size())) {
            lineTo(point);
        }
        content.closePath();
    }

    private void curve(Arc arc, double from, double to) throws IOException {
        double reach = 4.0 / 3 * StrictMath.tan(StrictMath.toRadians(to - from) / 4);
        var a = arc.at(from);
        var b = arc.at(to);
        var c = arc.centre();
        content.curveTo(
                points(a.x() - reach * (a.y() - c.y())),
                points(a.y() + reach * (a.x() - c.x())),
                points(b.x() + reach * (b.y() - c.y())),
                points(b.y() - reach * (b.x() - c.x())),
                points(b.x()),
                points(b.y()));
    }

    private void moveTo(Point point) throws IOException {
        content.moveTo(points(point.x()), points(point.y()));
    }

    private void lineTo(Point point) throws IOException {
        content.lineTo(points(point.x()), points(point.y()));
    }
}
