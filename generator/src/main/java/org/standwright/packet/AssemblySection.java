package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.StandDesign;
import org.standwright.design.StandDesign.Mount;
import org.standwright.design.Support;

/** The order of work; common practice, no source. */
final class AssemblySection implements Section {
    @Override
    public void print(Contents contents, Flow flow) {
        flow.freshPage();
        flow.heading("Assembly order");
        var steps = steps(contents.design(), contents);
        for (int i = 0; i < steps.size(); i++) {
            flow.item(Mark.step(i + 1), steps.get(i));
        }
    }

    private static List<String> steps(StandDesign design, Contents contents) {
        var steps = new ArrayList<String>();
        steps.add("Mark reference face and edge on every piece. Cut a test dado in scrap from the same sheet before "
                + "the real ones.");
        steps.add("Screw the slides to sides and partitions while the panels lie flat: centre each on its slide line, "
                + "set back from the front edge as listed. One story stick per bay keeps left and right alike.");
        steps.add("Dry fit the carcass without glue. Every panel reaches the bottom of its dado.");
        steps.add("Glue and join the bottom and the partitions.");
        steps.add("Add the sides, then the sub-top.");
        steps.add("Fit the back: it squares the carcass. The diagonals agree within " + contents.exact(1) + ".");
        steps.add(support(design.support()));
        steps.add(worktop(design, contents));
        steps.add("Take the drawers and anything loose out, lock or level the stand, unplug the machine and lift it on "
                + "with enough people or a hoist. Bolt it down, washers under every nut.");
        steps.add("Measure every opening at front and back, fill in the lines under 'Measure, then cut', then cut the "
                + "drawer boxes.");
        steps.add("Build the drawer boxes and hang them. Each runs freely over its whole travel.");
        steps.add(fronts(design, contents));
        steps.add("Check the working height. Tighten all bolts again after the first hours of use.");
        return steps;
    }

    private static String support(Support support) {
        if (support instanceof Support.Casters) {
            return "Turn the carcass over, join the caster blocks and bolt the casters through them with washers; "
                    + "wheel and swivel locks on the operator's side.";
        }
        if (support instanceof Support.Levelers) {
            return "Turn the carcass over, join the leveler blocks, drive in the nuts and screw in the levelers to "
                    + "their usual height.";
        }
        return support instanceof Support.Plinth
                ? "Join the plinth, put its pads on and set the carcass on it; no bare plywood on concrete."
                : "Put pads under the sides; no bare plywood on concrete.";
    }

    private static String worktop(StandDesign design, Contents contents) {
        var first = design.worktop().layers() == 2
                ? "Glue and screw the two layers of the worktop; trim the oversize one flush. "
                : "";
        return first + "Screw the worktop on from inside, through the sub-top, with no screw within "
                + contents.exact(30) + " of a machine bolt.";
    }

    private static String fronts(StandDesign design, Contents contents) {
        var gap = contents.exact(design.drawers().gap());
        var trimmed = design.drawers().mount() == Mount.INSET ? "Trim the inset fronts to their openings. " : "";
        return trimmed + "Set the drawer fronts from the bottom up with spacers of " + gap
                + ", two screws in oversize holes with washers; bore for the pulls when they sit right.";
    }
}
