package org.standwright.check.wall;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.check.Input;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;

/**
 * How near a holder is to riding up its bevel and out. Two screws that lock it to its strip hold it down with what they
 * carry across, as if it were so much heavier on its bevel: tan(tilt + φ) (1 + 2 Z' / W) (own derivation).
 */
record RideOut(HungWall wall, HungBody body) {

    /** (e - t/2) / d. */
    double ratio() {
        return body.hanging().ratio();
    }

    double limit() {
        double held = new HolderScrews(wall, body.load().holder()).lock();
        return body.hanging().bevel().rideOut() * (1 + held / body.hanging().weight());
    }

    Input[] inputs() {
        var hanging = body.hanging();
        return new Input[] {
            new Input("W", "all that hangs by it", Quantity.FORCE, hanging.weight()),
            new Input("e", "centre of mass in front of the wall", Quantity.LENGTH, hanging.centre()),
            new Input(
                    "t",
                    "thickness of the strip",
                    Quantity.LENGTH,
                    hanging.bevel().thickness()),
            new Input("d", "from the bevel down to where its back leans", Quantity.LENGTH, hanging.drop()),
            new Input("tilt", "of the bevel", Quantity.ANGLE, hanging.bevel().tilt()),
            new Input("mu", "friction", Quantity.RATIO, hanging.bevel().friction())
        };
    }

    List<Remedy> remedies() {
        var stronger = new Stronger(wall);
        return Stream.concat(Stream.of(stronger.locked(body.name())), stronger.elsewhere(body.load()).stream())
                .toList();
    }
}
