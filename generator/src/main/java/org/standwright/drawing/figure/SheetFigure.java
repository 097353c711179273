package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.standwright.design.kit.Saw;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
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

/**
 * Draws boards as they are sawn: pieces with label, size and grain, numbered cuts, hatched offcuts. Black and white
 * only. What is neither piece nor offcut is waste and stays bare.
 *
 * @param later labels of the pieces that wait for the second stage
 */
public record SheetFigure(Saw saw, Set<String> later, Units units, TextMeasure measure) {
    public SheetFigure {
        later = Set.copyOf(later);
    }

    /**
     * A board as drawn.
     *
     * @param smallest letters of a piece's label and size, mm; 0 where some stand outside their piece or off their cut
     */
    private record Drawn(Figure figure, Scale scale, double smallest) {}

    /** The board at the largest scale of the series at which it fits into this room, mm. */
    public Figure of(PlannedSheet planned, double width, double height) {
        return largest(planned, width, height).figure();
    }

    /** The same with its scale, for those who look for a piece on it. */
    public BoardFigure board(PlannedSheet planned, double width, double height) {
        var drawn = largest(planned, width, height);
        return new BoardFigure(drawn.figure(), drawn.scale());
    }

    /**
     * The same, if every label and size then has room in its piece and every number on its cut.
     *
     * @param least size of letters, mm
     */
    public Optional<Figure> readable(PlannedSheet planned, double width, double height, double least) {
        return Optional.of(largest(planned, width, height))
                .filter(drawn -> drawn.smallest() >= least
                        && drawn.figure().width() <= width
                        && drawn.figure().height() <= height)
                .map(Drawn::figure);
    }

    private Drawn largest(PlannedSheet planned, double width, double height) {
        var life = new Scale.Size(planned.from().length(), planned.from().width());
        return Scale.largest(life, width, height, scale -> List.of(draw(planned, scale)), Drawn::figure);
    }

    private Drawn draw(PlannedSheet planned, Scale scale) {
        var board = rect(planned.board(), scale);
        var letters = new PieceLetters(later, units, measure);
        boolean grain = planned.from().material().grain() == Grain.ALONG_LENGTH;
        var pieces = planned.pieces().stream()
                .map(piece -> letters.piece(piece, rect(piece.area(), scale), grain))
                .toList();
        var shapes = new ArrayList<Shape>();
        shapes.add(Polygon.area(board, Fill.WHITE));
        trim(planned, scale).ifPresent(shapes::add);
        planned.offcuts().forEach(offcut -> shapes.addAll(offcut(offcut).on(rect(offcut, scale))));
        pieces.forEach(piece -> shapes.addAll(piece.shapes()));
        shapes.add(Polygon.of(board, Pen.OUTLINE, Fill.NONE));
        planned.cuts().forEach(cut -> shapes.add(line(cut, scale)));
        var numbers = CutNumbers.on(planned.cuts(), cut -> rect(cut.kerf(), scale), shapes, measure);
        shapes.addAll(numbers.shapes());
        var leaders = new Leaders(board, shapes, measure);
        pieces.stream()
                .filter(piece -> !piece.isLabelled())
                .forEach(piece -> leaders.add(piece.piece().label(), middle(piece.rect())));
        numbers.homeless().forEach(cut -> leaders.add(String.valueOf(cut.number()), middle(rect(cut.kerf(), scale))));
        shapes.addAll(leaders.shapes());
        double smallest = numbers.homeless().isEmpty()
                ? pieces.stream()
                        .mapToDouble(PieceLetters.Lettered::smallest)
                        .min()
                        .orElse(0)
                : 0;
        return new Drawn(dimensioned(planned, board, scale, shapes), scale, smallest);
    }

    private Figure dimensioned(PlannedSheet planned, Rect board, Scale scale, List<Shape> shapes) {
        var length = new Span(0, board.x1(), units.bareLength(planned.from().length()));
        var width = new Span(0, board.y1(), units.bareLength(planned.from().width()));
        return new View(shapes, measure)
                .dimension(Side.BELOW, List.of(length))
                .dimension(Side.LEFT, List.of(width))
                .named("Scale " + scale + ", " + units.lengthWord());
    }

    /** Where the plan has no cuts for it. */
    private Optional<Shape> trim(PlannedSheet planned, Scale scale) {
        boolean sawn = planned.cuts().stream().anyMatch(cut -> cut.purpose() == Cut.Purpose.TRIM);
        return Optional.of(planned.trimmed(saw))
                .filter(trimmed -> !sawn && !trimmed.equals(planned.board()))
                .map(trimmed -> Polygon.of(rect(trimmed, scale), Pen.HIDDEN, Fill.NONE));
    }

    private OffcutMark offcut(Area area) {
        return new OffcutMark(
                units.bareLength(SheetUnit.mm(area.length())), units.bareLength(SheetUnit.mm(area.width())), measure);
    }

    private static Rect rect(Area area, Scale scale) {
        return scale.paper(new Rect(
                SheetUnit.mm(area.x()),
                SheetUnit.mm(area.y()),
                SheetUnit.mm((long) area.x() + area.length()),
                SheetUnit.mm((long) area.y() + area.width())));
    }

    private static Point middle(Rect rect) {
        return new Point((rect.x0() + rect.x1()) / 2, (rect.y0() + rect.y1()) / 2);
    }

    /** The middle of the kerf. */
    private static Shape line(Cut cut, Scale scale) {
        var kerf = rect(cut.kerf(), scale);
        var middle = middle(kerf);
        return cut.direction() == Cut.Direction.RIP
                ? Line.between(kerf.x0(), middle.y(), kerf.x1(), middle.y(), pen(cut))
                : Line.between(middle.x(), kerf.y0(), middle.x(), kerf.y1(), pen(cut));
    }

    private static Pen pen(Cut cut) {
        if (cut.purpose() == Cut.Purpose.TRIM) {
            return Pen.HIDDEN;
        }
        return cut.tool() == Cut.Tool.BREAK_DOWN_SAW ? Pen.HAND_CUT : Pen.CUT;
    }
}
