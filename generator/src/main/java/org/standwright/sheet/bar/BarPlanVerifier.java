package org.standwright.sheet.bar;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Cuts a plan's bars piece by piece, without knowing how it came about, and says what is wrong with it. */
public final class BarPlanVerifier {
    private BarPlanVerifier() {}

    /** Sentences; none for a plan that can be cut and has all pieces. */
    public static List<String> faults(List<BarPiece> pieces, List<BarKind> bars, BarPlan plan) {
        var faults = new ArrayList<String>();
        Map<String, Integer> lengths = new LinkedHashMap<>();
        Map<String, Integer> left = new LinkedHashMap<>();
        for (var piece : pieces) {
            if (lengths.put(piece.label(), piece.length()) != null) {
                faults.add("two pieces are labelled '" + piece.label() + "'.");
            }
            left.put(piece.label(), piece.count());
        }
        for (int i = 0; i < plan.bars().size(); i++) {
            var bar = plan.bars().get(i);
            for (var label : bar.pieces()) {
                if (lengths.containsKey(label)) {
                    left.merge(label, -1, Integer::sum);
                } else {
                    faults.add("bar " + (i + 1) + " has '" + label + "', which nobody asked for.");
                }
            }
            cut(bar, i + 1, lengths, plan.kerf(), faults);
        }
        left.forEach((label, count) -> {
            if (count != 0) {
                faults.add("of '" + label + "' " + Math.abs(count) + (count > 0 ? " are missing." : " are too many."));
            }
        });
        count(bars, plan, faults);
        return faults;
    }

    private static void cut(CutBar bar, int number, Map<String, Integer> lengths, int kerf, List<String> faults) {
        long at = 0;
        boolean spent = false;
        for (var label : bar.pieces()) {
            at += lengths.getOrDefault(label, 0);
            if (spent || at > bar.bar().length()) {
                faults.add("bar " + number + " is too short for '" + label + "'.");
                return;
            }
            spent = at == bar.bar().length();
            at = Math.min(at + kerf, bar.bar().length());
        }
        if (bar.bar().length() - at != bar.offcut()) {
            faults.add("bar " + number + " leaves " + (bar.bar().length() - at) + " units, not " + bar.offcut() + ".");
        }
    }

    private static void count(List<BarKind> bars, BarPlan plan, List<String> faults) {
        Map<BarKind, Long> there = new LinkedHashMap<>();
        bars.forEach(kind -> there.merge(kind, (long) kind.count(), Long::sum));
        plan.bars().forEach(bar -> there.merge(bar.bar(), -1L, Long::sum));
        there.forEach((kind, left) -> {
            if (left < 0) {
                faults.add((-left) + " bars of " + kind.length() + " units are used that are not there.");
            }
        });
    }
}
