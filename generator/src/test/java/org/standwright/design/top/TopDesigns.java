package org.standwright.design.top;

import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.standwright.design.Bay;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Mount;
import org.standwright.design.Place;
import org.standwright.design.Plan;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Envelope;
import org.standwright.design.kit.Feed;
import org.standwright.design.kit.Machine;
import org.standwright.design.kit.Mounting;
import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Range;
import org.standwright.design.kit.Reference;
import org.standwright.design.kit.Size2;

/** Stands for a machine with three holes that no turn or mirror brings onto each other. */
final class TopDesigns {
    /** Base 300 x 200; holes 40, 30 and 250, 40 and 100, 170 from the base's left front corner; M8. */
    static final Machine PRESS = Draft.OfMachine.of(
            Draft.OfMachine.plain(
                    "press",
                    new Size2(300, 200),
                    new Envelope(400, 500, 600, OptionalDouble.of(60), OptionalDouble.of(220)),
                    25,
                    Reference.fixed(Reference.Kind.TABLE, 250)),
            machine -> {
                machine.feed = Feed.LEFT_TO_RIGHT;
                machine.mounting = Optional.of(new Mounting(
                        12,
                        8,
                        new Point2(30, 20),
                        List.of(new Point2(10, 10), new Point2(220, 20), new Point2(70, 150))));
            });

    private TopDesigns() {}

    /** One bay 600 wide and 500 deep under the press, worktop 20 over in front. */
    static StandDesign press(Consumer<Draft> change) {
        return Draft.of(stand(bay(equal(3))), draft -> {
            draft.machine = PRESS;
            draft.plan(600, 500);
            change.accept(draft);
        });
    }

    static StandDesign stand(Bay... bays) {
        return Designs.stand(1000, Designs.LEVELERS, Mount.OVERLAY, List.of(bays));
    }

    static Place place(int turn, Double left, Double right, Double front, Double back) {
        return new Place(
                turn,
                new Place.Margins(optional(front), optional(back), optional(left), optional(right)),
                Optional.empty());
    }

    static Place shims(Place place, Range shims) {
        return new Place(place.turn(), place.margins(), Optional.of(shims));
    }

    static Plan plan(Double width, Double depth) {
        return new Plan(optional(width), optional(depth));
    }

    static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
