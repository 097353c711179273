package org.standwright.design;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.design.kit.Bar;
import org.standwright.design.kit.Machine;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.Saw;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/**
 * What a maker decided about one machine stand.
 *
 * @param unit what the maker writes and reads
 * @param savings what may be changed where that saves a sheet; empty where nothing may
 * @param rules what is stricter than usual, and what is accepted as it is
 */
public record StandDesign(
        String name,
        Units unit,
        Machine machine,
        Place place,
        WorkingHeight workingHeight,
        Plan plan,
        Layout layout,
        Support support,
        CarcassPlan carcass,
        Worktop worktop,
        List<Cutout> cutouts,
        List<Bay> bays,
        DrawerPlan drawers,
        Edges edges,
        Screws screws,
        Saw saw,
        Optional<Router> router,
        StockPlan stock,
        CuttingPlan cutting,
        Optional<Savings> savings,
        Loads loads,
        Site site,
        Steady steady,
        List<RuleChoice> rules)
        implements Design {
    public StandDesign {
        cutouts = List.copyOf(cutouts);
        bays = List.copyOf(bays);
        rules = List.copyOf(rules);
    }

    /** The same design at another working height. */
    public StandDesign at(WorkingHeight other) {
        return Redesign.of(this).workingHeight(other).done();
    }

    @Override
    public StandDesign readIn(Units other) {
        return Redesign.of(this).unit(other).done();
    }

    /** In the order of the carcass, worktop and drawers. */
    @Override
    public List<SheetGood> sheets() {
        return Stream.of(
                        carcass.sheet(),
                        carcass.back(),
                        worktop.sheet(),
                        drawers.box(),
                        drawers.bottom(),
                        drawers.front())
                .distinct()
                .toList();
    }

    /** What drawers without slides run on. */
    @Override
    public List<Bar> bars() {
        return drawers.hang() instanceof Hang.Runners runners ? List.of(runners.bar()) : List.of();
    }

    @Override
    public double fit() {
        return carcass.fit();
    }

    @Override
    public <R> R accept(DesignVisitor<R> visitor) {
        return visitor.stand(this);
    }
}
