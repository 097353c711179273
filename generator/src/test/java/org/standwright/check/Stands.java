package org.standwright.check;

import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.standwright.check.rules.Checks;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Side;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Box3;
import org.standwright.solid.AssemblySolids;

/** Stands for the tests of single rules, and what one rule finds in them. */
public final class Stands {
    private Stands() {}

    /** 720 x 560, 900 high with a machine of 38 kg, one bay of three drawers. */
    public static StandDesign plain(Consumer<Draft> change) {
        return Draft.of(Designs.stand(900, Designs.LEVELERS, Mount.OVERLAY, List.of(bay(equal(3)))), change);
    }

    public static StandDesign withMachine(Consumer<Draft.OfMachine> change) {
        return plain(draft -> draft.machine = Draft.OfMachine.of(draft.machine, change));
    }

    /** The stand of a design with everything that weighs on it. */
    public static LoadedStand loaded(StandDesign design) {
        var stand = StandBuilder.build(design);
        return LoadedStand.of(stand, AssemblySolids.of(stand.assembly()));
    }

    /** What all rules find that somebody has to read. */
    public static List<Finding> all(StandDesign design) {
        return Checks.of(loaded(design)).stream().filter(Finding::isWorthSaying).toList();
    }

    public static List<Finding> stops(StandDesign design) {
        return all(design).stream().filter(Finding::isStop).toList();
    }

    /** What one rule finds that somebody has to read. */
    public static List<Finding> found(StandDesign design, String rule) {
        return found(loaded(design), rule);
    }

    /** The same in a stand that was put together by hand; nothing weighs on it. */
    public static List<Finding> found(Stand stand, String rule) {
        return found(new LoadedStand(stand, List.of()), rule);
    }

    private static List<Finding> found(LoadedStand stand, String rule) {
        return Checks.STAND.stream()
                .filter(of -> of.text().name().equals(rule))
                .flatMap(of -> Checks.of(of, stand).stream())
                .filter(Finding::isWorthSaying)
                .toList();
    }

    /** The design with a change that applies to it. */
    public static StandDesign changed(StandDesign design, Remedy remedy) {
        return (StandDesign) remedy.change().apply(design).orElseThrow();
    }

    /** The same stand with its machine's base at a place. */
    public static Stand placed(Stand stand, Box3 base, Side operator, Optional<Side> infeed) {
        var machine = new MachineLayout(base, base, operator, infeed, List.of(), base.centre());
        return new Stand(
                stand.design(), stand.stack(), stand.carcass(), stand.bays(), Optional.of(machine), stand.assembly());
    }

    /** A stand of this design with other bays, which the builder need not know. */
    public static Stand divided(StandDesign design, BayLayout... bays) {
        var stand = StandBuilder.build(plain(draft -> {}));
        return new Stand(design, stand.stack(), stand.carcass(), List.of(bays), stand.machine(), stand.assembly());
    }
}
