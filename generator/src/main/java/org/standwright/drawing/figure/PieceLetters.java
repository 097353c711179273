package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.geom.Rect;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlacedPiece.Parting;
import org.standwright.sheet.SheetUnit;
import org.standwright.unit.Units;

/**
 * Pieces of a sheet with what is written in them, as large as they allow.
 *
 * @param later labels of the pieces that wait
 */
record PieceLetters(Set<String> later, Units units, TextMeasure measure) {
    /** Label with notes below it at least so large: else the notes are left out, mm. */
    private static final double WITH_NOTES = 2.2;
    /** Of a label, mm. */
    private static final double LARGEST = 7;

    /**
     * A piece as drawn.
     *
     * @param isLabelled whether its label found room
     * @param smallest size of the letters of label and size, mm; 0 where there was no room for both
     */
    record Lettered(PlacedPiece piece, Rect rect, List<Shape> shapes, boolean isLabelled, double smallest) {
        Lettered {
            shapes = List.copyOf(shapes);
        }
    }

    /** A piece; its size is that of the part: length along the part's grain first. */
    Lettered piece(PlacedPiece piece, Rect rect, boolean grain) {
        var whole = whole(piece, rect);
        var lines = whole.or(
                () -> Inscription.largest(List.of(List.of(piece.label())), rect, Letters.SMALLEST, LARGEST, measure));
        var reference = ReferenceMark.of(rect, piece.turned());
        var shapes = new ArrayList<Shape>();
        shapes.add(Polygon.area(rect, Fill.WHITE));
        shapes.add(reference.wedge());
        lines.ifPresent(shapes::addAll);
        if (grain) {
            shapes.addAll(GrainMark.in(rect, Lettering.of(lines.orElse(List.of()), measure), reference.room()));
        }
        return new Lettered(piece, rect, shapes, lines.isPresent(), smallest(whole.orElse(List.of())));
    }

    private static double smallest(List<Shape> lines) {
        return lines.stream()
                .filter(Text.class::isInstance)
                .mapToDouble(line -> ((Text) line).size())
                .min()
                .orElse(0);
    }

    /** Label and size, with notes where there is room for them too. */
    private Optional<List<Shape>> whole(PlacedPiece piece, Rect rect) {
        var label = piece.label();
        var size = size(piece);
        var all = new ArrayList<>(List.of(label, size));
        all.addAll(notes(piece));
        return Inscription.largest(List.of(all, List.of(String.join("  ", all))), rect, WITH_NOTES, LARGEST, measure)
                .or(() -> Inscription.largest(
                        List.of(List.of(label, size), List.of(label + "  " + size)),
                        rect,
                        Letters.SMALLEST,
                        LARGEST,
                        measure));
    }

    private List<String> notes(PlacedPiece piece) {
        var notes = new ArrayList<String>();
        if (piece.turned()) {
            notes.add("turned");
        }
        if (piece.parting() != Parting.NONE) {
            notes.add(piece.parting() == Parting.BEVEL ? "one bevel rip" : "parted later");
        }
        if (piece.parts().stream().allMatch(part -> later.contains(part.label()))) {
            notes.add("stage 2");
        }
        return notes;
    }

    private String size(PlacedPiece piece) {
        var area = piece.area();
        return piece.turned() ? size(area.width(), area.length()) : size(area.length(), area.width());
    }

    private String size(int length, int width) {
        return units.bareLength(SheetUnit.mm(length)) + " × " + units.bareLength(SheetUnit.mm(width));
    }
}
