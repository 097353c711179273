package org.standwright.design.built;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.KeptTogether;
import org.standwright.design.WallDesign;
import org.standwright.design.kit.StockSheet;
import org.standwright.geom.Grid;
import org.standwright.part.Run;

/**
 * Hangers that leave the sheet as one long blank, are bevelled in one rip and then crosscut: short pieces are not safe to rip
 * with a tilted blade (common practice, no source). The longest first, each into the first blank that has room for it.
 */
final class HangerChains {
    private static final String HANGER = "hanger";

    private final WallDesign design;
    private final double longest;

    private HangerChains(WallDesign design) {
        this.design = design;
        this.longest = longest();
    }

    /**
     * Those of two hangers or more.
     *
     * @param taken labels of parts that are kept together otherwise
     */
    static List<PartsTogether> of(WallDesign design, List<PlacedPart> parts, Set<String> taken) {
        return new HangerChains(design).all(parts, taken);
    }

    private List<PartsTogether> all(List<PlacedPart> parts, Set<String> taken) {
        var chains = new ArrayList<List<PlacedPart>>();
        parts.stream()
                .filter(part -> part.part().name().equals(HANGER) && !taken.contains(part.label()))
                .sorted(Comparator.comparingDouble(
                                (PlacedPart part) -> -part.part().roughLength())
                        .thenComparing(PlacedPart::label))
                .forEach(part -> chains.stream()
                        .filter(chain -> fits(chain, part))
                        .findFirst()
                        .orElseGet(() -> added(chains))
                        .add(part));
        return chains.stream()
                .filter(chain -> chain.size() > 1)
                .map(HangerChains::together)
                .toList();
    }

    private boolean fits(List<PlacedPart> chain, PlacedPart part) {
        double length = part.part().roughLength();
        for (var other : chain) {
            length += other.part().roughLength() + design.saw().kerf();
        }
        return !Grid.less(longest, length);
    }

    private static List<PlacedPart> added(List<List<PlacedPart>> chains) {
        var chain = new ArrayList<PlacedPart>();
        chains.add(chain);
        return chain;
    }

    private static PartsTogether together(List<PlacedPart> chain) {
        var labels = chain.stream().map(PlacedPart::label).toList();
        return new PartsTogether("/holders", new KeptTogether.OneBlank(labels, 0), chain, Run.ALONG);
    }

    /** What the shortest of the boards to buy gives along the grain, so that a blank fits any; mm. */
    private double longest() {
        double board = design.boards().stream()
                .filter(sheet -> sheet.material().equals(design.cleat().sheet().material()) && sheet.isBought())
                .mapToDouble(StockSheet::length)
                .min()
                .orElse(0);
        double sawn = board - design.saw().trim().offLength() - design.saw().kerf();
        return Math.min(sawn, or(design.saw().longestRip(), design.cleat().longest()));
    }

    private static double or(OptionalDouble rip, OptionalDouble strip) {
        return Math.min(rip.orElse(Double.MAX_VALUE), strip.orElse(Double.MAX_VALUE));
    }
}
