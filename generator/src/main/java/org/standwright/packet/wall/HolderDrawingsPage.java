package org.standwright.packet.wall;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.PlacedPart;
import org.standwright.cutlist.CutLine;
import org.standwright.drawing.holder.EqualHolders;
import org.standwright.drawing.holder.HolderViews;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;

/** How each holder is built: its views, dimensioned, and where each of its boards sits. */
final class HolderDrawingsPage implements WallPages.Page {
    /** No views are higher and none need be lower, mm. */
    private static final double HIGHEST = 100;

    private static final double LOWEST = 64;
    /** Taken by a holder's heading and its lines, mm. */
    private static final double HEAD = 34;
    /** Of a page: what is left is for one holder, not for two. */
    private static final double TWO = 0.7;

    @Override
    public void print(WallPaper paper, Flow flow) {
        if (paper.walls().holders().isEmpty()) {
            return;
        }
        flow.freshPage();
        flow.heading("Building the holders");
        flow.paragraph(
                "Front and right side, third-angle projection. Dashed: hidden. Dotted: room of the things and of "
                        + "fingers, open where it goes on. Crosses: screws and bores. Along the lower and the upper edge figures "
                        + "run from the left edge, at the left of the front from the upper edge of the back; beside the right "
                        + "side heights run from the lower edge of the back, below it depths from the wall's surface. Thin: the "
                        + "strip, the wall.");
        EqualHolders.of(paper.walls()).forEach(holder -> print(holder, paper, flow));
    }

    private static void print(EqualHolders holder, WallPaper paper, Flow flow) {
        var table = table(holder, paper);
        double rest = HEAD + flow.height(table);
        if (rest + LOWEST > flow.left()) {
            flow.freshPage();
        }
        boolean forTwo = flow.left() > TWO * flow.height();
        double half = flow.left() / 2 - rest;
        double height = forTwo && half >= LOWEST ? half : Math.min(HIGHEST, flow.left() - rest);
        var figure =
                HolderViews.of(holder, paper.design().cleat(), paper.units(), flow.width(), height, flow.measure());
        var words = new HolderWords(holder, paper.units());
        flow.heading(words.title());
        flow.lead(words.line());
        flow.figure(figure);
        flow.table(table);
    }

    private static Table table(EqualHolders holder, WallPaper paper) {
        var rows = new ArrayList<List<String>>();
        var equal = new LinkedHashMap<String, List<PlacedPart>>();
        for (var board : holder.boards()) {
            var line =
                    lines(holder, board, paper).map(CutLine::label).findFirst().orElse("–");
            equal.computeIfAbsent(line + board.part().name(), first -> new ArrayList<>())
                    .add(board);
        }
        for (var boards : equal.values()) {
            var board = boards.get(0);
            var part = board.part();
            var units = paper.units();
            rows.add(List.of(
                    lines(holder, board, paper).map(CutLine::label).findFirst().orElse("–"),
                    boards.size() == 1 ? holder.label(board) : part.name(),
                    String.valueOf(boards.size()),
                    units.bareLength(part.length()) + " × " + units.bareLength(part.width()) + " × "
                            + units.bareLength(part.thickness()),
                    new Whereabouts(holder, boards, units).words()));
        }
        return new Table(
                List.of(
                        Column.words("Label"),
                        Column.words("Board"),
                        Column.figures("Count"),
                        Column.figures("Size"),
                        Column.prose("Where")),
                rows);
    }

    private static Stream<CutLine> lines(EqualHolders holder, PlacedPart board, WallPaper paper) {
        return paper.cutList().lines().stream().filter(line -> line.members().contains(board.label()));
    }
}
