package org.standwright.viewer.sheet;

import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.shape.Line;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import org.standwright.geom.Rect;
import org.standwright.make.SheetPaper;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;

/**
 * What lies over a sheet's drawing, in its paper's frame: the picked part, and how far the sheet is sawn. What is drawn
 * is what is done: cuts to come are faded, a broad line lies over the one of now and lets its number through.
 *
 * <p>Few nodes that stay and change their shape: styling new ones for every cut would be slow.
 */
final class Marks {
    private final SheetsModel model;
    private final Path toCome = styled(new Path(), "cut-line", "to-come");
    private final Rectangle picked = styled(new Rectangle(), "picked-piece");
    private final Rectangle panel = styled(new Rectangle(), "panel");
    private final Line now = styled(new Line(), "cut-line", "now");

    Marks(SheetsModel model) {
        this.model = model;
        update();
    }

    private static <S extends Shape> S styled(S shape, String... styleClasses) {
        shape.getStyleClass().addAll(styleClasses);
        shape.setMouseTransparent(true);
        shape.setManaged(false);
        return shape;
    }

    /** In the order in which they lie over each other. */
    List<Node> nodes() {
        return List.of(toCome, panel, picked, now);
    }

    void update() {
        var sheet = model.sheet();
        var marked = model.marked();
        picked.setVisible(marked.isPresent());
        marked.ifPresent(laid -> place(picked, sheet.orElseThrow(), laid.area()));
        var step = model.step();
        toCome.setVisible(step.isPresent());
        step.ifPresent(cut -> fade(sheet.orElseThrow()));
        var here = step.filter(cut -> cut.made().sheet() == sheet.orElseThrow().index());
        List.of(panel, now).forEach(node -> node.setVisible(here.isPresent()));
        here.ifPresent(cut -> saw(sheet.orElseThrow(), cut));
    }

    private void fade(SheetPaper paper) {
        var sawn = model.steps().subList(0, model.doneProperty().get()).stream()
                .map(step -> step.cut().number())
                .collect(Collectors.toSet());
        toCome.getElements()
                .setAll(paper.sheet().cuts().stream()
                        .filter(cut -> !sawn.contains(cut.number()))
                        .map(cut -> middle(paper, cut))
                        .flatMap(line ->
                                List.of(new MoveTo(line.x0(), line.y0()), new LineTo(line.x1(), line.y1())).stream())
                        .toList());
    }

    private void saw(SheetPaper paper, CutStep step) {
        place(panel, paper, step.made().panel());
        var line = middle(paper, step.cut());
        now.setStartX(line.x0());
        now.setStartY(line.y0());
        now.setEndX(line.x1());
        now.setEndY(line.y1());
    }

    /** From one end of a line to the other, mm of paper. */
    private record Span(double x0, double y0, double x1, double y1) {}

    /** The middle of a kerf, as it is drawn. */
    private static Span middle(SheetPaper paper, Cut cut) {
        Rect kerf = paper.onPaper(cut.kerf());
        double x = (kerf.x0() + kerf.x1()) / 2;
        double y = (kerf.y0() + kerf.y1()) / 2;
        return cut.direction() == Cut.Direction.RIP
                ? new Span(kerf.x0(), y, kerf.x1(), y)
                : new Span(x, kerf.y0(), x, kerf.y1());
    }

    private static void place(Rectangle shape, SheetPaper paper, Area area) {
        var rect = paper.onPaper(area);
        shape.setX(rect.x0());
        shape.setY(rect.y0());
        shape.setWidth(rect.width());
        shape.setHeight(rect.height());
    }
}
