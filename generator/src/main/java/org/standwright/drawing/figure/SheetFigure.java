package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.kit.Saw;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.DimensionChain.Span;
import org.standwright.geom.Rect;
import org.standwright.part.Grain;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.SheetUnit;
import org.standwright.unit.Units;

/** One board as it is sawn: pieces with label, size and grain, numbered cuts, hatched offcuts. */
public final class SheetFigure {
    private final Saw saw;
    private final PlannedSheet planned;
    private final Units units;
    private final TextMeasure measure;

    private SheetFigure(Saw saw, PlannedSheet planned, Units units, TextMeasure measure) {
        this.saw = saw;
        this.planned = planned;
        this.units = units;
        this.measure = measure;
    }

    /** The board at the largest scale of the series at which it fits into this room, mm. */
    public static Figure of(
            Saw saw, PlannedSheet planned, Units units, double width, double height, TextMeasure measure) {
        var figure = new SheetFigure(saw, planned, units, measure);
        var life = new Scale.Size(planned.from().length(), planned.from().width());
        return Scale.largest(life, width, height, scale -> List.of(figure.draw(scale)));
    }

    private Figure draw(Scale scale) {
        var board = new Rect(
                0,
                0,
                scale.paper(planned.from().length()),
                scale.paper(planned.from().width()));
        var shapes = new ArrayList<Shape>();
        shapes.add(Polygon.of(board, Pen.OUTLINE, Fill.WHITE));
        var trimmed = planned.trimmed(saw);
        if (!trimmed.equals(planned.board())) {
            shapes.add(Polygon.of(rect(trimmed, scale), Pen.HIDDEN, Fill.NONE));
        }
        var letters = new PieceLetters(units, measure);
        boolean grain = planned.from().material().grain() == Grain.ALONG_LENGTH;
        planned.offcuts().forEach(offcut -> shapes.addAll(letters.offcut(offcut, rect(offcut, scale))));
        planned.pieces().forEach(piece -> shapes.addAll(letters.piece(piece, rect(piece.area(), scale), grain)));
        planned.cuts().forEach(cut -> shapes.add(line(cut, scale)));
        shapes.addAll(CutNumbers.free(planned.cuts(), cut -> rect(cut.kerf(), scale), shapes, measure));
        return new View(shapes, measure)
                .dimension(
                        Side.BELOW,
                        List.of(new Span(
                                0, board.x1(), units.bareLength(planned.from().length()))))
                .dimension(
                        Side.LEFT,
                        List.of(new Span(
                                0, board.y1(), units.bareLength(planned.from().width()))))
                .named("Scale " + scale + ", " + units.lengthWord());
    }

    private static Rect rect(Area area, Scale scale) {
        return scale.paper(new Rect(
                SheetUnit.mm(area.x()),
                SheetUnit.mm(area.y()),
                SheetUnit.mm((long) area.x() + area.length()),
                SheetUnit.mm((long) area.y() + area.width())));
    }

    /** The middle of the kerf. */
    private static Shape line(Cut cut, Scale scale) {
        var kerf = rect(cut.kerf(), scale);
        double x = (kerf.x0() + kerf.x1()) / 2;
        double y = (kerf.y0() + kerf.y1()) / 2;
        return cut.direction() == Cut.Direction.RIP
                ? Line.between(kerf.x0(), y, kerf.x1(), y, Pen.CUT)
                : Line.between(x, kerf.y0(), x, kerf.y1(), Pen.CUT);
    }
}
