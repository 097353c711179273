package org.standwright.viewer.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import org.standwright.drawing.Point;
import org.standwright.geom.Rect;
import org.standwright.make.SheetPaper;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;

/** What lies over a sheet's drawing, in its paper's frame: the picked part, and how far the sheet is sawn. */
final class Marks {
    /** Radius of the disc around a number, mm of paper. */
    private static final double DISC = 3.2;

    private final SheetsModel model;
    private final SheetPaper paper;

    private Marks(SheetsModel model, SheetPaper paper) {
        this.model = model;
        this.paper = paper;
    }

    static List<Node> of(SheetsModel model) {
        return model.sheet().map(paper -> new Marks(model, paper).nodes()).orElse(List.of());
    }

    private List<Node> nodes() {
        var nodes = new ArrayList<Node>();
        model.marked().ifPresent(laid -> nodes.add(rectangle(laid.area(), "picked-piece")));
        model.step().ifPresent(step -> {
            if (step.made().sheet() == paper.index()) {
                nodes.add(rectangle(step.made().panel(), "panel"));
            }
            nodes.addAll(cuts(step));
        });
        return nodes;
    }

    /** What is drawn is what is done: cuts to come are faded, the one of now is drawn again with its number. */
    private List<Node> cuts(CutStep now) {
        var sawn = model.steps().subList(0, model.doneProperty().get()).stream()
                .map(step -> step.cut().number())
                .collect(Collectors.toSet());
        var nodes = new ArrayList<Node>();
        paper.sheet().cuts().stream()
                .filter(cut -> !sawn.contains(cut.number()))
                .forEach(cut -> nodes.add(line(cut, "to-come")));
        if (now.made().sheet() == paper.index()) {
            nodes.add(line(now.cut(), "now"));
            nodes.add(number(now.cut()));
        }
        return nodes;
    }

    private Line line(Cut cut, String styleClass) {
        var kerf = paper.onPaper(cut.kerf());
        var middle = middle(kerf);
        var line = cut.direction() == Cut.Direction.RIP
                ? new Line(kerf.x0(), middle.y(), kerf.x1(), middle.y())
                : new Line(middle.x(), kerf.y0(), middle.x(), kerf.y1());
        line.getStyleClass().addAll("cut-line", styleClass);
        line.setMouseTransparent(true);
        return line;
    }

    private static Point middle(Rect kerf) {
        return new Point((kerf.x0() + kerf.x1()) / 2, (kerf.y0() + kerf.y1()) / 2);
    }

    /** In a disc on the middle of the cut; turned over, as the paper's y runs up. */
    private Node number(Cut cut) {
        var middle = middle(paper.onPaper(cut.kerf()));
        var disc = new Circle(DISC);
        disc.getStyleClass().add("disc");
        var digits = new Text(String.valueOf(cut.number()));
        digits.getStyleClass().add("digits");
        var number = new StackPane(disc, digits);
        number.getStyleClass().add("cut-number");
        number.setMouseTransparent(true);
        number.resizeRelocate(middle.x() - DISC, middle.y() - DISC, 2 * DISC, 2 * DISC);
        number.setManaged(false);
        number.setScaleY(-1);
        return number;
    }

    private Rectangle rectangle(Area area, String styleClass) {
        Rect rect = paper.onPaper(area);
        var shape = new Rectangle(rect.x0(), rect.y0(), rect.width(), rect.height());
        shape.getStyleClass().add(styleClass);
        shape.setMouseTransparent(true);
        return shape;
    }
}
