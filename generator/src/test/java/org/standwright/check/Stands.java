package org.standwright.check;

import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
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

/** Stands for the tests of single rules, and what one rule finds in them. */
final class Stands {
    private static final double WOOD = 40;

    private Stands() {}

    /** 720 x 560, 900 high with a machine of 38 kg, one bay of three drawers. */
    static StandDesign plain(Consumer<Draft> change) {
        return Draft.of(Designs.stand(900, Designs.LEVELERS, Mount.OVERLAY, List.of(bay(equal(3)))), change);
    }

    static StandDesign withMachine(Consumer<Draft.OfMachine> change) {
        return plain(draft -> draft.machine = Draft.OfMachine.of(draft.machine, change));
    }

    static List<Finding> found(StandDesign design, String rule) {
        return found(StandBuilder.build(design), rule);
    }

    static List<Finding> found(Stand stand, String rule) {
        return Checks.of(stand, WOOD).stream()
                .filter(finding -> finding.rule().equals(rule))
                .toList();
    }

    /** The same stand with its machine's base at a place. */
    static Stand placed(Stand stand, Box3 base, Side operator, Optional<Side> infeed) {
        var machine = new MachineLayout(base, base, operator, infeed, List.of());
        return new Stand(
                stand.design(), stand.stack(), stand.carcass(), stand.bays(), Optional.of(machine), stand.assembly());
    }

    /** A stand of this design with other bays, which the builder need not know. */
    static Stand divided(StandDesign design, BayLayout... bays) {
        var stand = StandBuilder.build(plain(draft -> {}));
        return new Stand(design, stand.stack(), stand.carcass(), List.of(bays), stand.machine(), stand.assembly());
    }
}
