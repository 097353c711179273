package org.standwright.sheet.bar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.standwright.sheet.Proof;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.cover.Pattern;

/**
 * Cuts lengths from bars at the least cost that it finds, with a proof of how far that is from the least possible. The
 * same pieces and bars give the same plan.
 */
public final class BarPlanner {
    /** Pieces of one job; what needs more is a mistake, or another trade. */
    public static final int MOST_PIECES = 10_000;

    private BarPlanner() {}

    /**
     * @param kerf units, 0 for a blade without width
     * @return bars as they are best cut, full ones first; its proof counts bars to buy where these cost the same
     * @throws IllegalArgumentException if a piece is longer than any bar, there are not enough bars, or a piece more than
     *     {@link #MOST_PIECES}
     */
    public static BarPlan plan(List<BarPiece> pieces, List<BarKind> bars, int kerf) {
        require(pieces, bars, kerf);
        long unit = bars.stream()
                .mapToLong(BarKind::cost)
                .filter(cost -> cost > 0)
                .min()
                .orElse(1);
        boolean alike = bars.stream().allMatch(bar -> bar.cost() == 0 || bar.cost() == unit);
        var goal = alike ? Proof.Goal.SHEETS : Proof.Goal.MONEY;
        if (pieces.isEmpty()) {
            return new BarPlan(List.of(), kerf, new Proof(goal, 0, 0));
        }
        var longestFirst = pieces.stream()
                .sorted(Comparator.comparingInt(BarPiece::length).reversed())
                .toList();
        var search = new BarSearch(BarJob.of(longestFirst, bars, kerf, alike ? unit : 1));
        var plan = search.plan()
                .orElseThrow(() -> new IllegalArgumentException(
                        "the bars at hand are too few for all pieces; have more of them, or buy as many as it takes."));
        var cut = new ArrayList<CutBar>();
        plan.forEach(pattern -> cut.add(cut(longestFirst, bars.get(pattern.kind()), pattern, kerf)));
        cut.sort(Comparator.comparingInt(CutBar::offcut));
        long cost = plan.stream().mapToLong(Pattern::cost).sum();
        var barPlan = new BarPlan(cut, kerf, new Proof(goal, cost, search.bound()));
        var faults = BarPlanVerifier.faults(pieces, bars, barPlan);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the bars cannot be cut as planned: " + String.join(" ", faults));
        }
        return barPlan;
    }

    private static CutBar cut(List<BarPiece> pieces, BarKind bar, Pattern pattern, int kerf) {
        var labels = new ArrayList<String>();
        long left = bar.length();
        for (int type = 0; type < pieces.size(); type++) {
            for (int i = 0; i < pattern.counts()[type]; i++) {
                labels.add(pieces.get(type).label());
                left = Math.max(0, left - pieces.get(type).length() - kerf);
            }
        }
        return new CutBar(bar, labels, (int) left);
    }

    private static void require(List<BarPiece> pieces, List<BarKind> bars, int kerf) {
        if (kerf < 0) {
            throw new IllegalArgumentException("kerf is " + kerf + " units, but must be 0 or more.");
        }
        long count = pieces.stream().mapToLong(BarPiece::count).sum();
        if (count > MOST_PIECES) {
            throw new IllegalArgumentException(
                    count + " pieces are to be cut from bars, but " + MOST_PIECES + " at most; plan them in parts.");
        }
        if (bars.isEmpty() && !pieces.isEmpty()) {
            throw new IllegalArgumentException("there are no bars to cut " + count + " pieces from; buy some.");
        }
        int longest = bars.stream().mapToInt(BarKind::length).max().orElse(0);
        for (var piece : pieces) {
            if (piece.length() > longest) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "'%s' is %.2f mm long, but the longest bar only %.2f mm; buy longer bars.",
                        piece.label(),
                        SheetUnit.mm(piece.length()),
                        SheetUnit.mm(longest)));
            }
        }
    }
}
