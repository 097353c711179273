package org.standwright.design.built;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.Design;
import org.standwright.design.KeptTogether;
import org.standwright.design.StandDesign;
import org.standwright.geom.Grid;
import org.standwright.part.Part;
import org.standwright.part.Run;

/**
 * Placed parts that leave the sheet as one block.
 *
 * @param field JSON pointer of the decision
 * @param as how they are kept together
 * @param parts in the order in which they follow each other
 * @param run along the grain, one after the other, or across it, side by side
 */
public record PartsTogether(String field, KeptTogether as, List<PlacedPart> parts, Run run) {
    public PartsTogether {
        parts = List.copyOf(parts);
    }

    /**
     * All that a stand's design wants kept together: what its maker listed, then the matched fronts of each bay.
     *
     * @throws org.standwright.design.ImpossibleDesignException when a name means no part, or parts cannot be one block
     */
    public static List<PartsTogether> of(StandDesign design, List<BayLayout> bays, List<PlacedPart> all) {
        var found = listed(design, all);
        if (design.drawers().matched()) {
            found.addAll(new MatchedFronts(design, bays).in(all));
        }
        TogetherRules.check(found, design.unit());
        return found;
    }

    /** What its maker listed, of any design. Throws as {@link #of(StandDesign, List, List)} does. */
    public static List<PartsTogether> of(Design design, List<PlacedPart> all) {
        var found = listed(design, all);
        TogetherRules.check(found, design.unit());
        return found;
    }

    private static List<PartsTogether> listed(Design design, List<PlacedPart> all) {
        var found = new ArrayList<PartsTogether>();
        var named = new NamedParts(all);
        var listed = design.cutting().together();
        for (int i = 0; i < listed.size(); i++) {
            var field = "/cutting/together/" + i;
            found.add(listed(
                    field,
                    listed.get(i),
                    named.of(field + "/parts", listed.get(i).parts())));
        }
        return found;
    }

    private static PartsTogether listed(String field, KeptTogether as, List<PlacedPart> parts) {
        return new PartsTogether(field, as, parts, haveOneLength(parts) ? Run.ACROSS : Run.ALONG);
    }

    private static boolean haveOneLength(List<PlacedPart> parts) {
        return parts.stream()
                .allMatch(part ->
                        Grid.same(part.part().roughLength(), parts.get(0).part().roughLength()));
    }

    /** What they have in common as a strip: their length side by side, else their width. */
    double commonSide(Part part) {
        return run == Run.ACROSS ? part.roughLength() : part.roughWidth();
    }

    /** Length of them all as a strip, cut apart by this kerf, mm. */
    public double stripLength(double kerf) {
        return run == Run.ALONG ? sum(kerf) : parts.get(0).part().roughLength();
    }

    /** Width of them all as a strip, cut apart by this kerf, mm. */
    public double stripWidth(double kerf) {
        return run == Run.ACROSS ? sum(kerf) : parts.get(0).part().roughWidth();
    }

    private double sum(double kerf) {
        double parted = (parts.size() - 1) * kerf;
        return parted
                + parts.stream()
                        .map(PlacedPart::part)
                        .mapToDouble(part -> run == Run.ALONG ? part.roughLength() : part.roughWidth())
                        .sum();
    }
}
