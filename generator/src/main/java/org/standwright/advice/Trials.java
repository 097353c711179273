package org.standwright.advice;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.rules.Checks;
import org.standwright.cutlist.CutList;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.StandBuilder;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.Effort;
import org.standwright.sheet.plan.ImpossiblePlanException;
import org.standwright.sheet.plan.SheetPlanner;
import org.standwright.solid.AssemblySolids;

/** Builds, plans and checks changed designs, and counts them. */
final class Trials {
    private final Trial before;
    private final AssemblySolids solids;
    private final Set<String> stops;
    private int tried;

    Trials(Trial before) {
        this.before = before;
        this.solids = AssemblySolids.of(before.stand().assembly());
        this.stops = stops(before.stand());
    }

    /** How many designs were looked at so far. */
    int tried() {
        return tried;
    }

    /**
     * A design with a quick plan, if it costs less than something else. Empty for one that cannot be built, that a new
     * finding stops, or whose lower bound says that no plan of it costs less.
     */
    Optional<Trial> cheaper(StandDesign design, Cost than) {
        tried++;
        try {
            var stand = StandBuilder.build(design);
            var stock = Stock.of(design);
            var cutList = CutList.of(stand);
            if (!LeastCost.of(stock, SheetPlanner.least(stock, cutList)).canBeLessThan(than)) {
                return Optional.empty();
            }
            return Optional.of(new Trial(stand, cutList, SheetPlanner.plan(stock, cutList, Effort.QUICK)))
                    .filter(trial -> trial.cost().isLessThan(than))
                    .filter(trial -> stops.containsAll(stops(trial.stand())));
        } catch (ImpossibleDesignException | ImpossiblePlanException refusal) {
            return Optional.empty();
        }
    }

    /** The same design with the plan that it gets when it is made, if that still costs less than the design before. */
    Optional<Trial> confirmed(Trial trial) {
        var stock = Stock.of(trial.stand().design());
        var plan = SheetPlanner.plan(stock, trial.cutList(), Effort.USUAL);
        return Optional.of(new Trial(trial.stand(), trial.cutList(), plan))
                .filter(better -> better.cost().isLessThan(before.cost()));
    }

    private Set<String> stops(Stand stand) {
        var stops = new TreeSet<String>();
        findings(stand).stream()
                .filter(Finding::isStop)
                .forEach(finding -> stops.add(finding.rule() + " " + finding.subject()));
        return stops;
    }

    /** What the checks find in a changed stand; solids that are the same as before are taken over. */
    List<Finding> findings(Stand stand) {
        return Checks.of(LoadedStand.of(stand, solids.rebuilt(stand.assembly())));
    }
}
