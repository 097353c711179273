package org.standwright.packet;

import java.util.List;
import java.util.Optional;
import org.standwright.drawing.Letters;
import org.standwright.drawing.figure.Figure;
import org.standwright.drawing.figure.SheetFigure;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.PageFrame;
import org.standwright.packet.words.BoardWords;
import org.standwright.packet.words.SecondStage;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlannedSheet;

/** The boards' figures: two beside each other or above each other where they stay readable, else on a page sideways. */
final class SheetPages {
    /** Room for a title above a figure, mm. */
    private static final double TITLE = 12;

    private static final double BETWEEN = 8;
    /** Least width of a title's lines, mm. */
    private static final double LEAST = 70;
    /** Share of an upright page that one of two figures above each other takes. */
    private static final double HALF = 0.46;

    private final Contents contents;
    private final Flow flow;
    private final SheetFigure style;
    /** Smallest letters in a figure that shares its row, mm; others go down to the smallest of all. */
    private static final double LETTERS_BESIDE = 2.0;

    /** A figure that waits for another one beside it. */
    private Optional<Named> waiting = Optional.empty();

    /** A board under its title, and its figure where it shares a row. */
    private record Named(PlannedSheet sheet, String title, Figure beside) {}

    SheetPages(Contents contents, Flow flow) {
        this.contents = contents;
        this.flow = flow;
        this.style = new SheetFigure(
                contents.plan().saw(),
                SecondStage.of(contents.stand()).labels(contents.cutList()),
                contents.units(),
                flow.measure());
    }

    void print() {
        for (var material : contents.plan().materials()) {
            for (int i = 0; i < material.sheets().size(); i++) {
                print(material, i);
            }
        }
        endRow();
    }

    private void print(MaterialPlan material, int index) {
        var sheet = material.sheets().get(index);
        var title = BoardWords.of(material, index, contents.units());
        var beside = beside(sheet).map(figure -> new Named(sheet, title, titled(figure, title)));
        if (beside.isPresent() && waiting.isPresent()) {
            flow.figures(List.of(waiting.get().beside(), beside.get().beside()));
            waiting = Optional.empty();
            return;
        }
        endRow();
        waiting = beside;
        if (beside.isEmpty()) {
            alone(sheet, title);
        }
    }

    private void endRow() {
        waiting.ifPresent(board -> alone(board.sheet(), board.title()));
        waiting = Optional.empty();
    }

    private void alone(PlannedSheet sheet, String title) {
        above(sheet).ifPresentOrElse(figure -> flow.figure(titled(figure, title)), () -> page(sheet, title));
    }

    private Optional<Figure> beside(PlannedSheet sheet) {
        double width = (flow.upright().width() - BETWEEN) / 2;
        return style.readable(sheet, width, HALF * flow.upright().height() - TITLE, LETTERS_BESIDE);
    }

    private Optional<Figure> above(PlannedSheet sheet) {
        return style.readable(
                sheet, flow.upright().width(), HALF * flow.upright().height() - TITLE, Letters.SMALLEST);
    }

    /** A page of its own, turned where that shows the board larger. */
    private void page(PlannedSheet sheet, String title) {
        var upright = fitted(sheet, flow.upright());
        var sideways = fitted(sheet, flow.sideways());
        boolean larger = sideways.width() > upright.width() + 1;
        flow.freshPage(larger ? flow.sideways() : flow.upright());
        flow.figure(titled(larger ? sideways : upright, title));
        flow.freshPage();
    }

    private Figure fitted(PlannedSheet sheet, PageFrame frame) {
        return style.of(sheet, frame.width(), frame.height() - TITLE);
    }

    private Figure titled(Figure figure, String title) {
        return figure.titled(title, LEAST, flow.measure());
    }
}
