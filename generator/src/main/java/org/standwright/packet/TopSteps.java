package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.Support;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Reference;
import org.standwright.drawing.figure.PanelHole;

/** Worktop on, then the machine with the drawers still out. Common practice, no source. */
final class TopSteps {
    /** A drill with its bit stands upright in an opening this high, mm; common practice, no source. */
    private static final double UPRIGHT_DRILL = 250;

    private TopSteps() {}

    static List<String> of(Contents<? extends Stand> contents, boolean drawers) {
        var steps = new ArrayList<String>();
        steps.add(worktop(contents) + holes(contents));
        contents.furniture()
                .design()
                .worktop()
                .plate()
                .ifPresent(plate -> steps.add("Try " + plate.name()
                        + " in its opening and turn the levelling screws until it lies flush all round; "
                        + "a straightedge over it must not rock."));
        steps.addAll(machine(contents, drawers));
        return steps;
    }

    private static String worktop(Contents<? extends Stand> contents) {
        if (contents.furniture().design().worktop().layers() == 1) {
            return "Screw the worktop on from inside the carcass, up through the sub-top." + angled(contents);
        }
        return "Lay the lower layer of the worktop on the sub-top, spread glue on it and lay the "
                + (isOversize(contents)
                        ? "oversize upper layer over it, even all round."
                        : "upper layer over it, edges even.")
                + " Screw both up from inside the carcass while the glue is wet: the screws "
                + "through the sub-top reach into the upper layer."
                + (isOversize(contents) ? " Trim it flush when the glue has set." : "")
                + angled(contents);
    }

    /** Whether the upper layer is trimmed to the lower one. */
    private static boolean isOversize(Contents<? extends Stand> contents) {
        return contents.furniture().assembly().parts().stream()
                .anyMatch(placed -> placed.label().equals("worktop upper layer")
                        && placed.part().oversize() > 0);
    }

    /** Whether a drill stands upright in every opening below the sub-top, or the screws there need another. */
    private static String angled(Contents<? extends Stand> contents) {
        boolean low = contents.furniture().bays().stream()
                .anyMatch(bay -> bay.sections().get(0).opening().height() < UPRIGHT_DRILL);
        return low
                ? " In openings lower than " + contents.exact(UPRIGHT_DRILL)
                        + " bore and drive with a right-angle head."
                : "";
    }

    private static String holes(Contents<? extends Stand> contents) {
        if (PanelHole.inWorktop(contents.furniture()).isEmpty()) {
            return "";
        }
        if (!isOversize(contents)) {
            return " Holes and openings of the layers and the sub-top lie in line before the first screw goes in.";
        }
        var rabbet = contents.furniture()
                .design()
                .worktop()
                .plate()
                .map(plate -> " Rout the rabbet for " + plate.name() + " from above and bore the pilots in its ledge.")
                .orElse("");
        return " Holes and openings of the lower layer and the sub-top lie in line before the first screw goes in; "
                + "those of the upper layer are made after the trim, through from the lower one." + rabbet
                + " All their places count from the trimmed edges.";
    }

    private static List<String> machine(Contents<? extends Stand> contents, boolean drawers) {
        if (contents.furniture().design().machine().reference().kind() == Reference.Kind.WORKTOP) {
            return List.of(steady(contents));
        }
        var lift = steady(contents) + " Unplug the machine and lift it on with enough people or a hoist"
                + (drawers ? ", the drawers still out." : ".");
        lift += contents.furniture()
                .design()
                .place()
                .shims()
                .map(shims -> " Set it on shims of " + contents.exact(shims.usual())
                        + ", one round each bolt; change them until its surface has the right height and lies level.")
                .orElse("");
        boolean bolted = contents.furniture().machine().map(MachineLayout::bolts).stream()
                .anyMatch(bolts -> !bolts.isEmpty());
        return List.of(lift, bolted ? bolts(drawers) : leftToYou(contents));
    }

    private static String bolts(boolean drawers) {
        return "Put the bolts in from above, wide washers and lock nuts on from below"
                + (drawers ? ", through the empty openings" : "")
                + ". Tighten them crosswise until the machine neither rocks nor twists.";
    }

    private static String leftToYou(Contents<? extends Stand> contents) {
        return "Left to you: the machine's bolts are not worked out and not listed. Bore through its own holes, none "
                + "closer than " + contents.exact(30) + " to a worktop screw and clear of every side and partition; "
                + "washers of " + contents.exact(25) + " or wider below, lock nuts.";
    }

    private static String steady(Contents<? extends Stand> contents) {
        var support = contents.furniture().design().support();
        if (support instanceof Support.Casters) {
            return "Lock all casters.";
        }
        return support instanceof Support.Levelers
                ? "Level the stand where it will work and lock the levelers."
                : "Set the stand where it will work; shim it until it neither rocks nor leans.";
    }
}
