package org.standwright.packet;

import java.util.List;
import org.standwright.design.Support;
import org.standwright.design.built.Stand;

/**
 * How what carries the carcass is built and joined, in the order in which everything can still be reached: heads and
 * nut flanges lie in recesses that the bottom panel covers. Common practice, no source.
 */
final class SupportSteps {
    private static final String BARE_WOOD = "no bare plywood on concrete";

    private SupportSteps() {}

    static List<String> of(Contents<? extends Stand> contents) {
        var support = contents.furniture().design().support();
        if (support instanceof Support.Casters casters) {
            return casters(casters);
        }
        if (support instanceof Support.Levelers levelers) {
            return levelers(levelers);
        }
        return support instanceof Support.Plinth
                ? plinth(contents)
                : List.of("Put the pads under the uprights; " + BARE_WOOD + ".");
    }

    private static String glued(Support.Bed bed) {
        return bed == Support.Bed.STRIPS
                ? "Glue the two layers of each block strip together, edges flush, bores in line, recesses on top."
                : "Glue the two base layers together, edges flush, bores in line, recesses on top.";
    }

    private static String set(Support.Bed bed) {
        return (bed == Support.Bed.STRIPS
                        ? "Spread glue on the strips, set them under the bottom, flush with the sides, and screw them "
                        : "Spread glue on the base, set it under the bottom, flush all round, and screw it ")
                + "down from inside the carcass through the bottom. The recesses are now covered for good.";
    }

    private static List<String> casters(Support.Casters casters) {
        var locks = casters.caster().brake() ? " The locks face the operator's side." : "";
        var kinds = casters.others()
                .map(others ->
                        " " + casters.caster().name() + " at the operator's side, " + others.name() + " at the other.")
                .orElse("");
        return List.of(
                glued(casters.bed()),
                "Put the caster bolts in from above, a wide washer under each head, every head below the surface. "
                        + "Bed the heads in epoxy, so that they do not turn when the nuts are tightened "
                        + "later.",
                set(casters.bed()),
                "Turn the carcass over. Put the casters over the bolts, washers and lock nuts on, and tighten." + kinds
                        + locks + " Turn it back.");
    }

    private static List<String> levelers(Support.Levelers levelers) {
        return List.of(
                glued(levelers.bed()),
                "Drive the leveler nuts in from above until each flange lies below the surface.",
                set(levelers.bed()),
                "Turn the carcass over, screw the levelers in to their usual height, and turn it back.");
    }

    private static List<String> plinth(Contents<? extends Stand> contents) {
        boolean divided = contents.furniture().bays().size() > 1;
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
