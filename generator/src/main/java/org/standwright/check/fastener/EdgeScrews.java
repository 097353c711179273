package org.standwright.check.fastener;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Joint;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Stand;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;

/**
 * Screws into a panel's edge carry no rated load: a bottom that is butted between the sides and stands on nothing would
 * hang on them with all that lies on it, which is a stop.
 */
public final class EdgeScrews implements Rule<LoadedStand> {
    private static final RuleText TEXT =
            RuleText.plain("edge-screws", "What carries where screws go into edges?", "common practice, no source");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        var joint = stand.design().carcass().joint();
        boolean housed = joint instanceof Joint.Housed;
        var findings = new ArrayList<Finding>();
        findings.add(Finding.note(
                TEXT,
                housed ? "back" : "carcass",
                housed
                        ? "The back's screws go into panel edges and are not rated: the glued rabbets carry, the screws "
                                + "only hold while the glue sets."
                        : "What joins the panels goes into their edges and is not rated. Nothing may hang on it: the "
                                + "panels stand on each other, and the back, glued on, keeps them square."));
        if (joint instanceof Joint.Screwed || joint instanceof Joint.Connected) {
            stand.assembly().parts().stream()
                    .filter(placed -> placed.part().name().equals("bottom") && !stands(placed, stand))
                    .forEach(bottom -> findings.add(hanging(bottom)));
        }
        return findings;
    }

    private static Finding hanging(PlacedPart bottom) {
        return Finding.stop(
                        TEXT,
                        bottom.label(),
                        "Nothing stands under it: it would hang with all that lies on it on screws into its own edges.")
                .remedies(List.of(Remedy.ofStand("housed panels", EdgeScrews::housed)));
    }

    private static Optional<StandDesign> housed(StandDesign design) {
        var housed = design.carcass().joined(new Joint.Housed());
        return Optional.of(Redesign.of(design).carcass(housed).done());
    }

    /** Whether the floor, a part or a block is right under it. */
    private static boolean stands(PlacedPart bottom, Stand stand) {
        var box = bottom.box();
        var others = Stream.concat(
                stand.assembly().parts().stream()
                        .filter(other -> !other.label().equals(bottom.label()))
                        .map(PlacedPart::box),
                stand.assembly().blocks().stream().map(Block::box));
        return Grid.same(box.min().z(), 0) || others.anyMatch(other -> isUnder(other, box));
    }

    private static boolean isUnder(Box3 other, Box3 box) {
        return Grid.same(other.max().z(), box.min().z())
                && Grid.less(
                        Math.max(other.min().x(), box.min().x()),
                        Math.min(other.max().x(), box.max().x()))
                && Grid.less(
                        Math.max(other.min().y(), box.min().y()),
                        Math.min(other.max().y(), box.max().y()));
    }
}
