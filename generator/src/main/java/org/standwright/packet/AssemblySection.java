package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.Mount;
import org.standwright.design.Support;
import org.standwright.design.kit.Reference;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;

/** The order of work; common practice, no source. */
final class AssemblySection implements Section {
    @Override
    public void print(Contents contents, Flow flow) {
        flow.freshPage();
        flow.heading("Assembly order");
        var steps = steps(contents);
        for (int i = 0; i < steps.size(); i++) {
            flow.item(Mark.step(i + 1), steps.get(i));
        }
    }

    private static List<String> steps(Contents contents) {
        boolean drawers =
                contents.stand().bays().stream().anyMatch(bay -> !bay.drawers().isEmpty());
        return Stream.of(
                        carcass(drawers, contents),
                        SupportSteps.of(contents),
                        List.of(worktop(contents)),
                        machine(drawers, contents),
                        drawers ? drawers(contents) : List.<String>of(),
                        List.of("Check the working height. Tighten all bolts again after the first hours of use."))
                .flatMap(List::stream)
                .toList();
    }

    private static List<String> carcass(boolean drawers, Contents contents) {
        var steps = new ArrayList<String>();
        steps.add("Mark reference end, reference edge and show face on every piece. Cut a test dado in scrap from the "
                + "same sheet before the real ones.");
        if (drawers) {
            steps.add("Screw the slides to sides and partitions while the panels lie flat: centre each on its slide "
                    + "line, set back from the front edge as listed. One story stick per bay keeps left and right "
                    + "alike.");
        }
        steps.add("Dry fit the carcass without glue. Every panel reaches the bottom of its dado.");
        boolean divided = contents.stand().bays().size() > 1;
        steps.add(
                divided
                        ? "Glue the partitions into the bottom, then the sides on, then the sub-top."
                        : "Glue the bottom into the sides, then the sub-top.");
        steps.add("Fit the back: it squares the carcass. Screws about every " + contents.exact(150)
                + " round the edges" + (divided ? " and along each partition" : "")
                + "; they are in panel edges, so nothing hangs on them. The diagonals agree within "
                + contents.exact(1) + ".");
        return steps;
    }

    private static String worktop(Contents contents) {
        if (contents.design().worktop().layers() == 1) {
            return "Screw the worktop on from inside the carcass, up through the sub-top.";
        }
        return "Lay the lower layer of the worktop on the sub-top, spread glue on it and lay the oversize upper layer "
                + "over it, even all round. Screw both up from inside the carcass while the glue is wet: the screws "
                + "through the sub-top reach into the upper layer. Trim it flush when the glue has set.";
    }

    private static List<String> machine(boolean drawers, Contents contents) {
        if (contents.design().machine().reference().kind() == Reference.Kind.WORKTOP) {
            return List.of(steady(contents));
        }
        return List.of(
                steady(contents) + " Unplug the machine and lift it on with enough people or a hoist"
                        + (drawers ? ", the drawers still out." : "."),
                "Left to you: the machine's bolts are not worked out and not listed. Bore through its own holes, none "
                        + "closer than " + contents.exact(30) + " to a worktop screw and clear of every side and "
                        + "partition; washers of " + contents.exact(25) + " or wider below, lock nuts.");
    }

    private static String steady(Contents contents) {
        var support = contents.design().support();
        if (support instanceof Support.Casters) {
            return "Lock all casters.";
        }
        return support instanceof Support.Levelers
                ? "Level the stand where it will work and lock the levelers."
                : "Set the stand where it will work; shim it until it neither rocks nor leans.";
    }

    private static List<String> drawers(Contents contents) {
        return List.of(
                "Measure every opening at front and back, fill in the lines under 'Measure, then cut', then cut the "
                        + "pieces marked 'stage 2'.",
                "Build the drawer boxes and hang them. Each runs freely over its whole travel.",
                fronts(contents));
    }

    private static String fronts(Contents contents) {
        var plan = contents.design().drawers();
        var trimmed = plan.mount() == Mount.INSET ? "Trim the inset fronts to their openings. " : "";
        return trimmed + "Set the drawer fronts from the bottom up with spacers of " + contents.exact(plan.gap())
                + ", two screws in oversize holes with washers. Bore for the pulls when the fronts sit right.";
    }
}
