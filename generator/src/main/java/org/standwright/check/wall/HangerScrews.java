package org.standwright.check.wall;

import java.util.List;
import java.util.Optional;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.wall.statics.WallScrew;

/** The screws that hold a holder's hanger to its back, in the hanger's face. The glue beside them is not counted. */
public final class HangerScrews implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "hanger-screws",
            "Do its own screws hold the hanger to the holder?",
            "as cleat-combined: Fw = (T h + W t / 2) / (n a), Fv = W / n",
            "The hanger pries about its upper edge; all screws over a strip get alike, the others and the glue nothing. Panels seldom leave the 6 D"
                    + " of thread that the NDS rates; its formulas are used all the same. The flat heads are not rated.",
            RatedStrip.STATICS + "NDS 2018 Eq. 12.2-2, 12.3.1 and 12.4, as quoted");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        return HungBody.all(wall).stream().map(body -> found(wall, body)).toList();
    }

    private static Finding found(HungWall wall, HungBody body) {
        return new HolderScrews(wall, body.load().holder())
                .hanger()
                .flatMap(screw -> judged(wall, body, screw))
                .orElseGet(() -> Finding.note(
                        TEXT, body.name(), "Screws as these in this board are not rated; glue the hanger too."));
    }

    private static Optional<Finding> judged(HungWall wall, HungBody body, WallScrew screw) {
        var units = wall.units();
        int count = new HolderScrews(wall, body.load().holder()).overStrips();
        int all = body.load().holder().made().hangerScrews();
        var load = body.section().hanger(body.hanging(), count).perScrew();
        double used = screw.use(load).most();
        if (!Double.isFinite(used)) {
            return Optional.empty();
        }
        var unrated = screw.isRated()
                ? ""
                : " Not rated by itself: with " + units.length(screw.into().thread())
                        + " of thread in the hanger there is less than the "
                        + units.length(screw.fastener().leastPenetration()) + " (6 D) that the source asks for.";
        var message = (count < all
                        ? "Each of the " + count + " of its " + all + " screws that lie over a strip"
                        : "Each of " + count + " screws")
                + " is drawn with " + units.force(load.out()) + " and carries "
                + units.force(load.sideways()) + " across: " + Quantity.RATIO.words(used, units) + " of what it may."
                + unrated
                + (used > 1 ? " Thicker screws, a thicker board or two smaller holders hold more." : "");
        return Optional.of(
                Finding.judged(TEXT, body.name(), new Gauge(Quantity.RATIO, used, RatedStrip.limit(1)), message)
                        .with(
                                new Input("Fw", "pull on each", Quantity.FORCE, load.out()),
                                new Input("Fv", "load across each", Quantity.FORCE, load.sideways()),
                                new Input("W'p", "what it may be drawn with", Quantity.FORCE, screw.withdrawal()),
                                new Input("Z'", "what it may carry across", Quantity.FORCE, screw.lateral()))
                        .with(new RideOut(wall, body).inputs()));
    }
}
