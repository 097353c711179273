package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.Grip;
import org.standwright.design.Hang;
import org.standwright.design.Mount;
import org.standwright.design.Shelves;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Hinge;
import org.standwright.packet.words.ShelfRow;

/** Drawers, their fronts, shelves on pins, doors: to the openings as they turned out. Common practice, no source. */
final class FrontSteps {
    private FrontSteps() {}

    static List<String> of(Contents<? extends Stand> contents, boolean drawers) {
        var steps = new ArrayList<String>();
        if (drawers) {
            steps.add("Measure every opening at front and back, fill in the lines under 'Measure, then cut', then cut "
                    + "the pieces marked 'stage 2'.");
            steps.add(
                    contents.furniture().design().drawers().hang() instanceof Hang.Runners
                            ? "Build the drawer boxes and plane them until each runs freely over its whole travel and "
                                    + "meets its stops."
                            : "Build the drawer boxes and hang them. Each runs freely over its whole travel.");
            steps.add(fronts(contents));
        }
        if (ShelfRow.of(contents.furniture()).stream().anyMatch(row -> row.kind() == Shelves.Kind.ADJUSTABLE)) {
            steps.add("Put four pins at one height for each adjustable shelf and lay it on them.");
        }
        if (contents.furniture().bays().stream().anyMatch(bay -> !bay.doors().isEmpty())) {
            steps.add(doors(contents, drawers));
        }
        return steps;
    }

    private static String fronts(Contents<? extends Stand> contents) {
        var plan = contents.furniture().design().drawers();
        var trimmed = plan.mount() == Mount.INSET ? "Trim the inset fronts to their openings. " : "";
        return trimmed + "Set the drawer fronts from the bottom up with spacers of " + contents.exact(plan.gap())
                + ", two screws in oversize holes with washers." + pulls(contents, "fronts");
    }

    private static String doors(Contents<? extends Stand> contents, boolean drawers) {
        var plan = contents.furniture().design().drawers();
        var trimmed = plan.mount() == Mount.INSET ? "Trim the inset doors to their openings. " : "";
        return trimmed + "Fix the hinges to the doors, hang the doors and set them until the gaps of "
                + contents.exact(plan.gap()) + " are even" + (drawers ? " with those of the drawer fronts." : ".")
                + catches(contents) + pulls(contents, "doors");
    }

    private static String catches(Contents<? extends Stand> contents) {
        boolean butt = contents.furniture().bays().stream()
                .flatMap(bay -> bay.doors().stream())
                .anyMatch(door -> door.hinge() instanceof Hinge.Butt);
        return butt ? " Fix the magnetic catches so that they stop the doors on butt hinges flush." : "";
    }

    private static String pulls(Contents<? extends Stand> contents, String what) {
        return contents.furniture().design().drawers().grip() instanceof Grip.Bought
                ? " Bore for the pulls when the " + what + " sit right."
                : "";
    }
}
