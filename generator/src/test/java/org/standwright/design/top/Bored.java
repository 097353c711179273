package org.standwright.design.top;

import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.Stand;
import org.standwright.part.Feature;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;

/** What is cut into the parts of a stand, where it lies in the assembly. */
final class Bored {
    private Bored() {}

    /** Centres of a part's through holes for this purpose: 'x y diameter', rounded to 0.01 mm. */
    static List<String> holes(Stand stand, String label, String purpose) {
        var part = part(stand, label);
        return features(part, Hole.class).stream()
                .filter(hole -> hole.purpose().equals(purpose) && hole.depth().isEmpty())
                .map(hole -> at(part, hole.x(), hole.y()) + " " + round(hole.diameter()))
                .toList();
    }

    /** Opposite corners of a part's pocket for this purpose: 'x y x y', those of the part's own axes, rounded to 0.01 mm. */
    static List<String> pockets(Stand stand, String label, String purpose) {
        var part = part(stand, label);
        return features(part, Pocket.class).stream()
                .filter(pocket -> pocket.purpose().equals(purpose))
                .map(pocket -> at(part, pocket.area().x0(), pocket.area().y0()) + " "
                        + at(part, pocket.area().x1(), pocket.area().y1()))
                .toList();
    }

    static PlacedPart part(Stand stand, String label) {
        return stand.assembly().parts().stream()
                .filter(part -> part.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    static <F extends Feature> List<F> features(PlacedPart part, Class<F> kind) {
        return part.part().features().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    /** By the names of the axes, not by the placement's own arithmetic. */
    private static String at(PlacedPart part, double x, double y) {
        double[] point = {
            part.placement().origin().x(),
            part.placement().origin().y(),
            part.placement().origin().z()
        };
        go(point, part.placement().along().name(), x);
        go(point, part.placement().across().name(), y);
        boolean upright = part.part().name().equals("back");
        return round(point[0]) + " " + round(point[upright ? 2 : 1]);
    }

    private static void go(double[] point, String axis, double distance) {
        point[axis.charAt(0) - 'X'] += axis.endsWith("PLUS") ? distance : -distance;
    }

    private static String round(double value) {
        return String.valueOf(Math.round(value * 100) / 100.0);
    }
}
