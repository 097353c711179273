package org.standwright.packet.words;

import java.util.List;
import java.util.Optional;
import org.standwright.cutlist.BarRun;
import org.standwright.cutlist.CutList;
import org.standwright.design.Hang;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Bar;

/**
 * Bars of one section.
 *
 * @param bar as bought
 */
public record BarsToBuy(BarRun run, Optional<Bar> bar, double kerf) {
    /** One a section, in order of the cut list. */
    public static List<BarsToBuy> of(StandDesign design, CutList cutList) {
        return cutList.bars().stream()
                .map(run -> new BarsToBuy(
                        run,
                        bought(design).filter(bar -> bar.material().equals(run.section())),
                        design.saw().kerf()))
                .toList();
    }

    private static Optional<Bar> bought(StandDesign design) {
        return design.drawers().hang() instanceof Hang.Runners runners ? Optional.of(runners.bar()) : Optional.empty();
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
        return bar.map(bought -> run.bars(bought.length(), kerf)).orElse(List.of());
    }
}
