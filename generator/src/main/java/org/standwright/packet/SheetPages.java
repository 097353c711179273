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

    /** Of a page's rest that a figure is made to fit, mm. */
    private static final double SHORTEST = 65;

    private static final double BETWEEN = 8;
    /** Times smaller than life that a figure is drawn at most to share a row. */
    private static final double SMALLEST_SCALE = 20;

    /** Least width of a title's lines, mm. */
    private static final double LEAST = 70;
    /** Share of an upright page that one of two figures above each other takes. */
    private static final double HALF = 0.46;

    private final Contents<?> contents;
    private final Flow flow;
    private final SheetFigure style;
    /** Smallest letters in a figure that is drawn smaller to share a page, mm; others have the smallest of all. */
    private static final double WHEN_SHARING = 2.0;

    /** A figure that waits for another one beside it. */
    private Optional<Named> waiting = Optional.empty();

    /** A board under its title, and its figure where it shares a row. */
    private record Named(PlannedSheet sheet, String title, Figure beside) {}

    SheetPages(Contents<?> contents, Flow flow) {
        this.contents = contents;
        this.flow = flow;
        this.style = new SheetFigure(
                contents.plan().saw(),
                SecondStage.of(contents.furniture()).labels(contents.cutList()),
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
        if (sheet.from().length() > SMALLEST_SCALE * width) {
            return Optional.empty();
        }
        return style.readable(sheet, width, HALF * flow.upright().height() - TITLE, WHEN_SHARING);
    }

    /** In what is left of the page where that is enough for it, else in half a page. */
    private Optional<Figure> above(PlannedSheet sheet) {
        double width = flow.upright().width();
        double half = HALF * flow.upright().height();
        var inHalf = style.readable(sheet, width, half - TITLE, Letters.SMALLEST);
        return flow.left() >= half || flow.left() < SHORTEST
                ? inHalf
                : style.readable(sheet, width, flow.left() - TITLE, WHEN_SHARING)
                        .or(() -> inHalf);
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
