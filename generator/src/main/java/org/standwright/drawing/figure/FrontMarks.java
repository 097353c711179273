package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.built.Compartment;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Side;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.TextMeasure;
import org.standwright.geom.Rect;

/**
 * What is drawn on the front view beside its parts: names of drawers and doors, what is left open, and a dashed V on
 * each door that points at its hinges.
 */
record FrontMarks(Stand stand, Scale scale, TextMeasure measure) {
    /** A hinge on paper, across the door's edge and along it, mm. */
    private static final double HINGE = 0.5;

    List<Shape> shapes() {
        var shapes = new ArrayList<Shape>();
        for (var compartment : Compartment.of(stand.bays())) {
            shapes.addAll(marks(compartment.section()));
        }
        return shapes;
    }

    private List<Shape> marks(SectionLayout section) {
        var shapes = new ArrayList<Shape>();
        if (section instanceof SectionLayout.Drawers drawers) {
            drawers.drawers().forEach(drawer -> shapes.addAll(name(drawer.name(), drawer.front())));
        } else if (section instanceof SectionLayout.Closed closed) {
            closed.doors().forEach(door -> shapes.addAll(door(door)));
        } else if (section instanceof SectionLayout.Open open) {
            shapes.addAll(name("open", lowest(open)));
        } else if (section instanceof SectionLayout.Clear clear) {
            var full = name("clear: " + clear.use(), clear.opening());
            shapes.addAll(full.isEmpty() ? name("clear", clear.opening()) : full);
        }
        return shapes;
    }

    private List<Shape> name(String words, Rect area) {
        return Caption.middle(words, scale.paper(area), Letters.BODY, measure);
    }

    /** Under its lowest shelf, where no shelf runs through the words. */
    private static Rect lowest(SectionLayout.Open open) {
        var opening = open.opening();
        return open.shelves().stream()
                .findFirst()
                .map(shelf -> new Rect(opening.x0(), opening.y0(), opening.x1(), opening.y0() + shelf))
                .orElse(opening);
    }

    private List<Shape> door(DoorLayout door) {
        var front = scale.paper(door.front());
        boolean left = door.hung() == Side.LEFT;
        double hinge = left ? front.x0() : front.x1();
        double handle = left ? front.x1() : front.x0();
        double middle = (front.y0() + front.y1()) / 2;
        var shapes = new ArrayList<Shape>();
        shapes.add(Line.between(hinge, middle, handle, front.y0(), Pen.HIDDEN));
        shapes.add(Line.between(hinge, middle, handle, front.y1(), Pen.HIDDEN));
        for (double height : door.hinges()) {
            double y = front.y0() + scale.paper(height);
            var leaf = new Rect(hinge - HINGE, y - 2 * HINGE, hinge + HINGE, y + 2 * HINGE);
            shapes.add(Polygon.of(leaf, Pen.DIMENSION, Fill.GRAY));
        }
        shapes.addAll(name(door.name(), door.front()));
        return shapes;
    }
}
