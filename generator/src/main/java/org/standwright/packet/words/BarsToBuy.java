package org.standwright.packet.words;

import java.util.List;
import java.util.Optional;
import org.standwright.cutlist.BarRun;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.design.Design;
import org.standwright.design.kit.Bar;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.bar.BarKind;
import org.standwright.sheet.bar.BarPiece;
import org.standwright.sheet.bar.BarPlan;
import org.standwright.sheet.bar.BarPlanner;
import org.standwright.sheet.bar.CutBar;

/**
 * Bars of one section.
 *
 * @param bar as bought
 */
public record BarsToBuy(BarRun run, Optional<Bar> bar, double kerf) {
    /** One a section, in order of the cut list. */
    public static List<BarsToBuy> of(Design design, CutList cutList) {
        return cutList.bars().stream()
                .map(run -> new BarsToBuy(run, bought(run, design), design.saw().kerf()))
                .toList();
    }

    private static Optional<Bar> bought(BarRun run, Design design) {
        return design.bars().stream()
                .filter(bar -> bar.material().equals(run.section()))
                .findFirst();
    }

    /** Width of the section, mm. */
    public double width() {
        return run.section().barWidth().orElseThrow();
    }

    /** Length of all pieces with a cut for each, mm. */
    public double length() {
        return run.length(kerf);
    }

    /** Labels of what comes from each bar, in cutting order; nothing where the length of a bar is not known. */
    public List<List<String>> plan() {
        return barPlan()
                .map(plan -> plan.bars().stream().map(CutBar::pieces).toList())
                .orElse(List.of());
    }

    /**
     * The fewest bars found, with the proof of how few there could be; empty where the length of a bar is not known.
     *
     * @throws IllegalArgumentException if a piece is longer than a bar
     */
    public Optional<BarPlan> barPlan() {
        return bar.map(bought -> {
            run.lines().forEach(line -> requireShorter(line, bought));
            var pieces = run.lines().stream()
                    .filter(line -> line.count() > 0)
                    .map(line ->
                            new BarPiece(line.label(), SheetUnit.up(line.part().roughLength()), line.count()))
                    .toList();
            var bars = List.of(BarKind.endless(SheetUnit.down(bought.length())));
            return BarPlanner.plan(pieces, bars, SheetUnit.up(kerf));
        });
    }

    private void requireShorter(CutLine line, Bar bought) {
        double length = line.part().roughLength();
        if (SheetUnit.up(length) > SheetUnit.down(bought.length())) {
            throw new IllegalArgumentException("'" + line.part().name() + "' is " + length + " mm long, but a bar of '"
                    + run.section().name() + "' only " + bought.length() + " mm; buy longer bars.");
        }
    }
}
