package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.Hang;
import org.standwright.design.Joint;
import org.standwright.design.Shelves;
import org.standwright.design.built.Compartment;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.packet.words.ShelfRow;

/** From the cut pieces to a square carcass with its back on. Common practice, no source. */
final class CarcassSteps {
    private final Contents<? extends Stand> contents;
    private final boolean divided;
    private final boolean innerPanels;

    private CarcassSteps(Contents<? extends Stand> contents) {
        this.contents = contents;
        var bays = contents.furniture().bays();
        this.divided = bays.size() > 1;
        this.innerPanels = bays.stream().anyMatch(bay -> bay.sections().size() > 1)
                || hasBaysWithin()
                || hasShelves(Shelves.Kind.FIXED);
    }

    static List<String> of(Contents<? extends Stand> contents) {
        var carcass = new CarcassSteps(contents);
        var steps = new ArrayList<String>();
        steps.add("Mark reference end, reference edge and show face on every piece. " + carcass.tried());
        steps.addAll(carcass.edging());
        steps.addAll(carcass.flat());
        steps.add(carcass.dryFit());
        steps.add(carcass.joined());
        steps.add(carcass.back());
        return steps;
    }

    private String tried() {
        boolean housed = innerPanels || contents.furniture().design().carcass().joint() instanceof Joint.Housed;
        return (housed ? "Cut a test dado" : "Bore a test joint")
                + " in scrap from the same sheet before the real ones.";
    }

    private boolean hasBaysWithin() {
        return contents.furniture().bays().stream()
                .flatMap(bay -> bay.sections().stream())
                .anyMatch(section -> section instanceof SectionLayout.Divided);
    }

    private boolean hasShelves(Shelves.Kind kind) {
        return ShelfRow.of(contents.furniture()).stream().anyMatch(row -> row.kind() == kind);
    }

    private List<String> edging() {
        return contents.cutList().edgings().isEmpty()
                ? List.of()
                : List.of("Cover the edges that the cut list names before anything is machined: tape or lipping on, "
                        + "ends trimmed, flush with both faces. All places count from finished edges.");
    }

    /** What is easier while the panels still lie flat. */
    private List<String> flat() {
        var steps = new ArrayList<String>();
        if (hasShelves(Shelves.Kind.ADJUSTABLE)) {
            steps.add("Bore the rows for the shelf pins while the panels lie flat, all with one template from the same "
                    + "end, so that the shelves lie level.");
        }
        if (contents.furniture().bays().stream().anyMatch(bay -> !bay.doors().isEmpty())) {
            steps.add("Bore sides and partitions for the hinges while they lie flat.");
        }
        if (hasDrawers()) {
            steps.add(
                    contents.furniture().design().drawers().hang() instanceof Hang.Runners
                            ? "Screw the runners, kickers and stops to sides and partitions while the panels lie flat, "
                                    + "on the pilots of the notes; no glue, so that they can be set or replaced. One "
                                    + "story stick per bay keeps left and right alike."
                            : "Screw the slides to sides and partitions while the panels lie flat: centre each on its "
                                    + "slide line, set back from the front edge as listed. One story stick per bay "
                                    + "keeps left and right alike.");
        }
        return steps;
    }

    private boolean hasDrawers() {
        return Compartment.of(contents.furniture().bays()).stream()
                .anyMatch(compartment -> compartment.section() instanceof SectionLayout.Drawers);
    }

    private String dryFit() {
        var housed = "Every panel reaches the bottom of its dado.";
        if (contents.furniture().design().carcass().joint() instanceof Joint.Housed) {
            return "Dry fit the carcass without glue. " + housed;
        }
        return "Dry fit the carcass without glue. Butted panels meet without a gap, edges flush"
                + (innerPanels ? "; what is housed between them reaches the bottom of its dado." : ".");
    }

    private String joined() {
        var joint = contents.furniture().design().carcass().joint();
        if (joint instanceof Joint.Housed) {
            return divided
                    ? "Glue the partitions into the bottom" + inner() + ", then the sides on, then the sub-top."
                    : "Glue the bottom" + inner() + " into the sides, then the sub-top.";
        }
        var order = (divided ? "the partitions on the bottom" : "the bottom between the sides")
                + inner()
                + (divided ? ", then the sides, then the sub-top" : ", then the sub-top");
        if (joint instanceof Joint.Doweled doweled) {
            return "Glue and dowel " + order + ". Bore faces and edges with one jig from the reference edge; "
                    + "dowels " + contents.exact(doweled.dowel().diameter()) + " × "
                    + contents.exact(doweled.dowel().length()) + ", glue in the holes and on the edges, clamps on "
                    + "until it has set.";
        }
        if (joint instanceof Joint.Connected connected) {
            return "Draw together " + order + " with the connecting screws ("
                    + connected.connector().name()
                    + "), through the bores in the faces into those in the edges. No glue: it comes apart again. "
                    + "Tighten them only when all are in.";
        }
        return "Clamp and screw " + order + ", through the bores in the faces into the pilots in the edges, glue "
                + "between. Screws in panel edges carry no rated load: nothing hangs on them alone.";
    }

    private String inner() {
        return innerPanels
                ? ", with the dividers, fixed panels and fixed shelves glued in their dados between them"
                        + (hasBaysWithin()
                                ? " (bays within bays first: their partitions and shelves between the panels "
                                        + "above and below them)"
                                : "")
                : "";
    }

    private String back() {
        var joint = contents.furniture().design().carcass().backPieces() == 1
                ? ""
                : "Its two pieces meet on the middle of a partition's edge: draw that line first, and screw both "
                        + "pieces along it. ";
        return "Fit the back: it squares the carcass. " + joint + "Screws about every " + contents.exact(150)
                + " round the edges"
                + (divided ? " and along each partition" : "")
                + "; they are in panel edges, so nothing hangs on them. The diagonals agree within "
                + contents.exact(1) + ".";
    }
}
