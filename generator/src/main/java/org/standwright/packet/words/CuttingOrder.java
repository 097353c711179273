package org.standwright.packet.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.standwright.design.kit.Saw;
import org.standwright.sheet.MaterialPlan;

/**
 * All cuts of one material in the order in which they are sawn, set-up by set-up.
 *
 * @param now what is cut at once
 * @param later what waits until the openings are measured; its set-ups count on
 */
public record CuttingOrder(List<SetUp> now, List<SetUp> later) {
    public CuttingOrder {
        now = List.copyOf(now);
        later = List.copyOf(later);
    }

    /** @param waiting labels of the pieces of the second stage */
    public static CuttingOrder of(MaterialPlan material, Saw saw, Set<String> waiting) {
        var cuts = new ArrayList<SawnCut>();
        for (int i = 0; i < material.sheets().size(); i++) {
            var sheet = material.sheets().get(i);
            cuts.addAll(SheetCuts.of(i + 1, sheet, sheet.trimmed(saw), waiting));
        }
        cuts.sort(Comparator.comparingInt((SawnCut cut) -> cut.cut().number()).thenComparingInt(SawnCut::sheet));
        var now = setUps(cuts.stream().filter(cut -> !cut.waits()).toList(), 1);
        var later = setUps(cuts.stream().filter(SawnCut::waits).toList(), now.size() + 1);
        return new CuttingOrder(now, later);
    }

    /** Both stages, one after the other. */
    public List<SetUp> all() {
        return Stream.concat(now.stream(), later.stream()).toList();
    }

    private static List<SetUp> setUps(List<SawnCut> cuts, int number) {
        var setUps = new ArrayList<SetUp>();
        int from = 0;
        for (int to = 1; to <= cuts.size(); to++) {
            if (to == cuts.size() || !cuts.get(to).sharesSetUpWith(cuts.get(from))) {
                setUps.add(new SetUp(number + setUps.size(), cuts.subList(from, to)));
                from = to;
            }
        }
        return setUps;
    }
}
