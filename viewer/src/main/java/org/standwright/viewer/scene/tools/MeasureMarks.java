package org.standwright.viewer.scene.tools;

import javafx.scene.DepthTest;
import javafx.scene.Group;
import javafx.scene.Node;
import org.standwright.viewer.scene.AssemblyView;
import org.standwright.viewer.scene.measure.MeasureNodes;
import org.standwright.viewer.scene.measure.Measured;

/** Marks the faces that are measured, and draws the line between them, seen through everything. */
final class MeasureMarks {
    private static final double PIXELS = 2.5;

    /** How much thicker or thinner the line may get before it is drawn again. */
    private static final double TOLERANCE = 1.2;

    private final AssemblyView view;
    private final MeasureModel model;
    private final MeasureNodes nodes;
    private final Group faces = new Group();
    private final Group line = new Group();
    private double drawn;

    MeasureMarks(AssemblyView view, MeasureModel model) {
        this.view = view;
        this.model = model;
        this.nodes = new MeasureNodes(view::glow);
        line.setDepthTest(DepthTest.DISABLE);
        view.add(faces, line);
        model.readingProperty().subscribe(this::draw);
        view.model().viewpoint().sight().subscribe(sight -> {
            if (wide() > drawn * TOLERANCE || wide() < drawn / TOLERANCE) {
                drawLine();
            }
        });
    }

    private void draw() {
        faces.getChildren()
                .setAll(model.readingProperty().get().faces().stream()
                        .map(nodes::face)
                        .toList());
        drawLine();
    }

    private void drawLine() {
        drawn = wide();
        line.getChildren()
                .setAll(model.readingProperty().get().measured().stream()
                        .map(this::line)
                        .toList());
    }

    private Node line(Measured measured) {
        return nodes.line(measured, drawn);
    }

    /** Thickness of the line for the size at which things are seen now, mm. */
    private double wide() {
        return PIXELS * view.model().viewpoint().sight().getValue().perPixel();
    }
}
