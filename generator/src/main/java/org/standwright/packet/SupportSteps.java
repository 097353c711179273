package org.standwright.packet;

import java.util.List;
import org.standwright.design.Support;

/**
 * How what carries the carcass is built and joined, in the order in which everything can still be reached: heads and
 * nut flanges lie in recesses that the bottom panel covers. Common practice, no source.
 */
final class SupportSteps {
    private static final String GLUED =
            "Glue the two layers of each block strip together, edges flush, bores in line, " + "recesses on top.";
    private static final String SET = "Spread glue on the strips, set them under the bottom, flush with the sides, and "
            + "screw them down from inside the carcass through the bottom. The recesses are now covered for good.";
    private static final String BARE_WOOD = "no bare plywood on concrete";

    private SupportSteps() {}

    static List<String> of(Contents contents) {
        var support = contents.design().support();
        if (support instanceof Support.Casters casters) {
            return casters(casters);
        }
        if (support instanceof Support.Levelers) {
            return levelers();
        }
        return support instanceof Support.Plinth
                ? plinth(contents)
                : List.of("Put the pads under the uprights; " + BARE_WOOD + ".");
    }

    private static List<String> casters(Support.Casters casters) {
        var locks = casters.caster().brake() ? " The locks face the operator's side." : "";
        return List.of(
                GLUED,
                "Put the caster bolts in from above, a wide washer under each head, every head below the surface. "
                        + "Bed the heads in epoxy (not listed), so that they do not turn when the nuts are tightened "
                        + "later.",
                SET,
                "Turn the carcass over. Put the casters over the bolts, washers and lock nuts on, and tighten." + locks
                        + " Turn it back.");
    }

    private static List<String> levelers() {
        return List.of(
                GLUED,
                "Drive the leveler nuts in from above until each flange lies below the surface.",
                SET,
                "Turn the carcass over, screw the levelers in to their usual height, and turn it back.");
    }

    private static List<String> plinth(Contents contents) {
        boolean divided = contents.stand().bays().size() > 1;
        return List.of(
                "Glue front and back of the plinth into the rabbets of its sides"
                        + (divided ? " and the rails into their dados" : "")
                        + ", clamp it and keep it square until the glue has set. Put the pads under it; " + BARE_WOOD
                        + ".",
                "Set the carcass on the plinth, sides flush, the plinth's rear face in line with the inside of the back, "
                        + "and screw it down from inside through the holes in the bottom. The screws go into panel edges "
                        + "(not rated) and only hold the carcass in place.");
    }
}
