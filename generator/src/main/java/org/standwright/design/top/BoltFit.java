package org.standwright.design.top;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Point2;
import org.standwright.geom.Rect;

/** Whether every machine bolt comes down where a washer and a nut have room under the sub-top. */
final class BoltFit {
    private final Frame frame;
    private final MachineBolts bolts;
    private final UnderTop under;

    BoltFit(Frame frame, MachineBolts bolts, UnderTop under) {
        this.frame = frame;
        this.bolts = bolts;
        this.under = under;
    }

    void check() {
        apart();
        var spot = new FreeSpot(nutRoom(), under.uprights());
        var rooms = bolts.rooms();
        for (int i = 0; i < rooms.size(); i++) {
            if (!spot.isFree(rooms.get(i))) {
                throw refusal(i, spot.shift(rooms));
            }
        }
    }

    /** Washers lie side by side. */
    private void apart() {
        var washers = bolts.taken();
        for (int i = 0; i < washers.size(); i++) {
            for (int j = i + 1; j < washers.size(); j++) {
                if (washers.get(i).meets(washers.get(j).area())) {
                    throw new ImpossibleDesignException(
                            "/machine/mounting",
                            "Machine bolts " + (i + 1) + " and " + (j + 1) + " are so close that their washers of "
                                    + frame.design().unit().length(bolts.washer()) + " meet.",
                            List.of("Measure the holes again, or leave one of the two out."));
                }
            }
        }
    }

    /** The sub-top from below, behind inset fronts. */
    private Rect nutRoom() {
        var subTop = Seen.FROM_ABOVE.of(under.subTop());
        double front =
                frame.isInset() ? frame.design().drawers().front().material().thickness() : 0;
        return new Rect(subTop.x0(), subTop.y0() + front, subTop.x1(), subTop.y1());
    }

    private ImpossibleDesignException refusal(int bolt, Optional<Point2> shift) {
        var ways = new ArrayList<String>();
        shift.ifPresent(way -> {
            var written = new Written(frame);
            var base = Seen.FROM_ABOVE.of(
                    new MachinePlace(frame).layout().orElseThrow().base());
            ways.add(
                    "Shift the machine " + written.way(way) + ": make its margins " + written.margins(base, way) + ".");
        });
        if (shift.isEmpty()) {
            ways.add("Turn the machine, or use other bays or a larger plan.");
        }
        return new ImpossibleDesignException(
                shift.isPresent() ? "/place/margins" : "/machine/mounting",
                "Machine bolt " + (bolt + 1) + " " + trouble(bolt),
                List.copyOf(ways));
    }

    private String trouble(int bolt) {
        var units = frame.design().unit();
        var at = bolts.places().get(bolt);
        if (!Taken.within(WorktopSize.outline(frame), Taken.around(at.x(), at.y(), bolts.hole() / 2))) {
            return "lies outside the worktop.";
        }
        var room = bolts.rooms().get(bolt);
        var wanted = "its washer of " + units.length(bolts.washer()) + " with "
                + units.length(room.width() / 2 - bolts.washer() / 2) + " around it";
        return under.uprights().stream()
                .filter(upright -> upright.meets(room))
                .findFirst()
                .map(upright -> "comes too close to " + upright.what() + ": " + wanted + " would meet it.")
                .orElse("comes through where the sub-top leaves no room below: " + wanted
                        + " would reach over its edge.");
    }
}
