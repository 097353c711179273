package org.standwright.check.wall;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.wall.statics.ScrewLoad;
import org.standwright.check.wall.statics.WallScrew;
import org.standwright.unit.Units;

/** What draws the worst screw of each strip out of its stud. */
public final class CleatWithdrawal implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "cleat-withdrawal",
            "Do the screws of the strips stay in the studs?",
            "Fw = sum of s (T h + W t / 2) / a and of the strip's own W t / 2 / a, T = W max(tan tilt, (e - t/2) / d); W'p = 0.9 x 19.65 G^2 D p; of two"
                    + " screws at a stud the upper gets a^2 / (a^2 + b^2) of that, b of the lower",
            RatedStrip.ASSUMED,
            RatedStrip.STATICS + "withdrawal, NDS 2018 Eq. 12.2-2, as quoted");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        return RatedStrip.of(wall).stream().map(strip -> found(wall, strip)).toList();
    }

    private static Finding found(HungWall wall, RatedStrip strip) {
        var units = wall.units();
        var worst = strip.worst(ScrewLoad::out);
        double most = strip.screw().withdrawal();
        var message = strip.where(worst, units) + "a screw is drawn out with "
                + units.force(worst.load().out()) + ", and holds " + units.force(most) + "."
                + unrated(strip.screw(), units);
        return strip.partOf(TEXT, worst, worst.load().out(), most, message, wall);
    }

    private static String unrated(WallScrew screw, Units units) {
        return screw.isRated()
                ? ""
                : " Only " + units.length(screw.into().thread()) + " of its thread is in the stud; with less than "
                        + units.length(screw.fastener().leastPenetration()) + " (6 D) it counts as holding nothing.";
    }
}
