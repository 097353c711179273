package org.standwright.check.machine;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Content;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.geom.Grid;

/**
 * Room for a hose to bend in a bay kept clear for it: bend radius at least 3 x its outside diameter, so the opening is
 * at least that wide and, from the carcass's front edge to the inside of the back, that deep; mm. A section is matched
 * with the hose of its use; of several hoses of one use the thickest counts. Common practice, no source.
 */
public final class HoseBend implements Rule<LoadedStand> {
    private static final RuleText TEXT =
            RuleText.plain("hose-bend", "Has the hose room to bend?", "common practice, no source");

    private static final double RADIUS = 3;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        return stand.bays().stream().flatMap(bay -> check(stand, bay)).toList();
    }

    private static Stream<Finding> check(Stand stand, BayLayout bay) {
        return bay.sections().stream().flatMap(section -> {
            if (section instanceof SectionLayout.Divided divided) {
                return divided.bays().stream().flatMap(inner -> check(stand, inner));
            }
            return section instanceof SectionLayout.Clear clear ? tight(stand, bay, clear) : Stream.empty();
        });
    }

    private static Stream<Finding> tight(Stand stand, BayLayout bay, SectionLayout.Clear clear) {
        double hose = ClearContents.of(stand.design()).stream()
                .filter(content -> content.use().equals(clear.use()))
                .map(Content.Clear::hose)
                .mapToDouble(diameter -> diameter.orElse(0))
                .max()
                .orElse(0);
        double width = clear.opening().width();
        double depth = stand.carcass().size().y()
                - stand.design().carcass().back().material().thickness();
        double least = RADIUS * hose;
        if (!Grid.less(Math.min(width, depth), least)) {
            return Stream.empty();
        }
        var units = stand.design().unit();
        return Stream.of(Finding.caution(
                TEXT,
                "bay " + bay.name(),
                "Its opening is " + units.length(width) + " wide and " + units.length(depth) + " deep, but a hose of "
                        + units.length(hose) + " bends in " + units.length(least)
                        + ", 3 times its diameter. Make the bay wider or deeper, or use a thinner hose."));
    }
}
