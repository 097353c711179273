package org.standwright.router.board;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Plot;
import org.standwright.geom.Vec2;
import org.standwright.router.RoutedSheet;
import org.standwright.router.machining.Machining;

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
     */
    public static RouterPlots of(String title, RoutedSheet sheet, Router router) {
        var worked = sheet.pieces().stream()
                .map(piece -> new Worked(
                        piece, Machining.of(piece.part(), router, sheet.from().thickness())))
                .toList();
        var turned = worked.stream().anyMatch(piece -> piece.below().findAny().isPresent());
        var dowels = turned ? Dowels.of(sheet, router) : List.<Vec2>of();
        var top = new BoardSide(sheet.from(), UnaryOperator.identity());
        var bottom = new BoardSide(sheet.from(), new Turning(sheet.from().width()));
        for (var side : List.of(top, bottom)) {
            side.addDowels(dowels, router.dowel());
        }
        for (var piece : worked) {
            top.add(piece, piece.above().toList());
            bottom.add(piece, piece.below().toList());
        }
        var topPlot = top.plot(title + ", top");
        var bottomPlot = turned ? Optional.of(bottom.plot(title + ", bottom")) : Optional.<Plot>empty();
        var legend = new Legend(title, sheet, router, worked, dowels, topPlot, bottomPlot);
        return new RouterPlots(topPlot, bottomPlot, legend.lines());
    }
}
