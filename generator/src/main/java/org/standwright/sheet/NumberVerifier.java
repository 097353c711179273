package org.standwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/** Judges the order of the cuts of one material: numbered through all its boards, what waits last. */
final class NumberVerifier {
    private NumberVerifier() {}

    /** @param later labels of the pieces that wait */
    static List<String> faults(List<PlannedSheet> sheets, Set<String> later) {
        var faults = new ArrayList<String>();
        var waits = new TreeMap<Integer, Boolean>();
        for (var sheet : sheets) {
            int last = 0;
            for (var cut : sheet.cuts()) {
                if (cut.number() <= last || waits.put(cut.number(), false) != null) {
                    faults.add("cut " + cut.number() + " is not numbered in order.");
                }
                last = cut.number();
            }
            for (var sawn : CutReplay.of(sheet).sawn()) {
                waits.put(sawn.cut().number(), waits(sawn.panel(), sheet, later));
            }
        }
        if (!waits.isEmpty() && (waits.firstKey() != 1 || waits.lastKey() != waits.size())) {
            faults.add("its cuts are not numbered from 1 to " + waits.size() + ".");
        }
        checkLast(waits, faults);
        return faults;
    }

    private static boolean waits(Panel panel, PlannedSheet sheet, Set<String> later) {
        return panel.pieces(sheet)
                .flatMap(piece -> piece.parts().stream())
                .allMatch(part -> later.contains(part.label()));
    }

    private static void checkLast(TreeMap<Integer, Boolean> waits, List<String> faults) {
        boolean waiting = false;
        for (var cut : waits.entrySet()) {
            if (waiting && !cut.getValue()) {
                faults.add("cut " + cut.getKey() + " comes after cuts that have to wait.");
                return;
            }
            waiting = cut.getValue();
        }
    }
}
