package org.standwright.check.machine;

import java.util.Locale;
import java.util.Optional;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Side;

/**
 * Which way a machine faces on its stand.
 *
 * @param operator the stand's side at which the person works
 * @param infeed the stand's side at which boards go in
 */
record Facing(Side operator, Optional<Side> infeed) {
    /** As the machine was placed, or as the design turns it while it has no place. */
    static Facing of(Stand stand) {
        var machine = stand.design().machine();
        int turn = stand.design().place().turn();
        return stand.machine()
                .map(placed -> new Facing(placed.operator(), placed.infeed()))
                .orElseGet(() -> new Facing(
                        machine.operator().turned(turn), machine.feed().infeed().map(side -> side.turned(turn))));
    }

    static String word(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }
}
