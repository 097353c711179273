package org.standwright.router.board;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Plot;
import org.standwright.router.RoutedPiece;
import org.standwright.router.RoutedSheet;
import org.standwright.router.machining.Mm;
import org.standwright.router.machining.Sizes;
import org.standwright.unit.Units;

/**
 * One board as its router's program sees it.
 *
 * @param top everything that is cut with the board lying as it was planned; last, as it frees the parts
 * @param bottom what is cut first, with the board turned over side to side, where some part is worked on both faces
 * @param legend what the operator has to know, as lines of text
 */
public record RouterPlots(Plot top, Optional<Plot> bottom, List<String> legend) {
    public RouterPlots {
        legend = List.copyOf(legend);
    }

    /**
     * Draws a board.
     *
     * @param title what the board is called: 'Planer stand: birch 18, sheet 1 of 2'
     * @param units of the design, beside the millimetres of what is set or drilled by hand
     * @param drawing name of the file that shows a piece by itself
     */
    public static RouterPlots of(
            String title, RoutedSheet sheet, Router router, Units units, Function<RoutedPiece, String> drawing) {
        var sizes = new Sizes(units);
        var worked = sheet.pieces().stream()
                .map(piece -> Worked.of(piece, router, sheet.from().thickness(), sizes))
                .toList();
        var turned = worked.stream().anyMatch(piece -> piece.below().findAny().isPresent());
        var dowels = turned ? Dowels.of(sheet, router) : Dowels.none();
        var top = new BoardSide(sheet.from(), UnaryOperator.identity());
        var bottom = new BoardSide(sheet.from(), new Turning(sheet.from().width()));
        var wide = Mm.of(router.dowel());
        bottom.addDowels(dowels.places(), router.dowel(), "dowel " + wide + " through");
        top.addDowels(dowels.places(), router.dowel(), "bed dowel " + wide + " " + Mm.of(Dowels.IN_BED) + " deep");
        for (var piece : worked) {
            top.add(piece, piece.above().toList());
            bottom.add(piece, piece.below().toList());
        }
        if (turned) {
            double strip = router.spacing() - router.bit() / 2;
            bottom.addEdges("BOTTOM UP, FIRST: this edge towards you", "towards you when the top is cut", strip);
            top.addEdges("TOP UP, THEN: this edge towards you", "was towards you when the bottom was cut", strip);
            bottom.addNote("BOTTOM UP, FIRST: lower edge towards you", worked);
            top.addNote("TOP UP, THEN: lower edge towards you", worked);
        }
        var topPlot = top.plot(title + ", top");
        var bottomPlot = turned ? Optional.of(bottom.plot(title + ", bottom")) : Optional.<Plot>empty();
        var legend = new Legend(title, sheet, router, sizes, drawing, worked, dowels, topPlot, bottomPlot);
        return new RouterPlots(topPlot, bottomPlot, legend.lines());
    }
}
