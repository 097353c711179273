package org.standwright.design.built;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.FrontGrain;
import org.standwright.design.KeptTogether;
import org.standwright.design.StandDesign;
import org.standwright.part.Run;

/** The drawer fronts of each bay, from top to bottom, as one strip; a bay within a bay has a strip of its own. */
final class MatchedFronts {
    private final StandDesign design;
    private final List<BayLayout> bays;

    MatchedFronts(StandDesign design, List<BayLayout> bays) {
        this.design = design;
        this.bays = bays;
    }

    List<PartsTogether> in(List<PlacedPart> all) {
        var strips = new ArrayList<PartsTogether>();
        bays.forEach(bay -> collect(bay, all, strips));
        return strips;
    }

    private void collect(BayLayout bay, List<PlacedPart> all, List<PartsTogether> strips) {
        var labels = new ArrayList<String>();
        for (var section : bay.sections()) {
            if (section instanceof SectionLayout.Drawers column) {
                column.drawers().forEach(drawer -> labels.add("drawer " + drawer.name() + " front"));
            } else if (section instanceof SectionLayout.Divided divided) {
                divided.bays().forEach(inner -> collect(inner, all, strips));
            }
        }
        if (labels.size() > 1) {
            strips.add(strip(labels, all));
        }
    }

    private PartsTogether strip(List<String> labels, List<PlacedPart> all) {
        var parts = labels.stream()
                .map(label -> all.stream()
                        .filter(part -> part.label().equals(label))
                        .findFirst()
                        .orElseThrow())
                .toList();
        boolean upright = design.drawers().frontGrain() == FrontGrain.UPRIGHT;
        return new PartsTogether(
                "/drawers/matched", new KeptTogether.OneStrip(labels), parts, upright ? Run.ALONG : Run.ACROSS);
    }
}
