package org.standwright.viewer.hand;

import java.util.List;
import javafx.collections.ObservableList;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Shape;
import org.standwright.viewer.hand.change.Mark;

/** Marks on the screen. Shapes stay as they are while only their points change: so it is quick enough to be dragged. */
final class MarkNodes extends Group {
    private List<Mark> shown = List.of();

    MarkNodes() {
        setManaged(false);
        setMouseTransparent(true);
    }

    void show(List<Mark> marks, Scale scale) {
        if (!isAlike(marks)) {
            getChildren().setAll(marks.stream().map(MarkNodes::node).toList());
        }
        shown = marks;
        for (int i = 0; i < marks.size(); i++) {
            place(marks.get(i), points(getChildren().get(i)), scale);
        }
    }

    private boolean isAlike(List<Mark> marks) {
        if (marks.size() != shown.size()) {
            return false;
        }
        for (int i = 0; i < marks.size(); i++) {
            var now = marks.get(i);
            if (now.isArea() != shown.get(i).isArea()
                    || !now.look().equals(shown.get(i).look())) {
                return false;
            }
        }
        return true;
    }

    private static Shape node(Mark mark) {
        Shape node = mark.isArea() ? new Polygon() : new Polyline();
        node.getStyleClass().setAll("mark", mark.look());
        return node;
    }

    private static ObservableList<Double> points(Node node) {
        return node instanceof Polygon area ? area.getPoints() : ((Polyline) node).getPoints();
    }

    /** On the middle of pixels, so that lines are sharp. */
    private static void place(Mark mark, ObservableList<Double> points, Scale scale) {
        points.setAll(mark.points().stream()
                .flatMap(point -> List.of(sharp(scale.x(point.x())), sharp(scale.y(point.y()))).stream())
                .toList());
    }

    private static double sharp(double pixel) {
        return Math.floor(pixel) + 0.5;
    }
}
