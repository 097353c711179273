package org.standwright.check.wall.statics;

import java.util.SplittableRandom;
import org.standwright.check.fastener.LoadDuration;
import org.standwright.check.fastener.NumberedScrew;

/** The cleat of the worked example, and any others. */
final class Cleats {
    static final double INCH = 25.4;
    static final double POUND = 4.4482216152605;
    static final int SEEDS = 500;

    private Cleats() {}

    /** 50 lbf, 8 in in front of the wall, 6 in from the bevel down, strip 3/4 in. */
    static Hanging worked() {
        return new Hanging(50 * POUND, 8 * INCH, 6 * INCH, CleatBevel.usual(0.75 * INCH));
    }

    /** Pulled 3.125 in up, two screws 1.75 in up. */
    static StripPull workedStrip() {
        return StripPull.evenly(worked(), 3.125 * INCH, 1.75 * INCH, 2);
    }

    /** #10 x 3 in through plywood 3/4 in and a gap into a stud of spruce-pine-fir. */
    static WallScrew workedScrew(double gap) {
        var through = ScrewedThrough.roundHead(0.75 * INCH, 0.42, gap, NumberedScrew.NO_10.head());
        return WallScrew.intoStud(NumberedScrew.NO_10, 3 * INCH, through, 0.42, LoadDuration.PERMANENT);
    }

    static CleatBevel anyBevel(SplittableRandom random) {
        return new CleatBevel(random.nextDouble(9, 40), random.nextDouble(30, 45), random.nextDouble(0, 0.9));
    }

    static Hanging any(SplittableRandom random) {
        var bevel = anyBevel(random);
        double centre = bevel.middle() + random.nextDouble(0, 400);
        return new Hanging(random.nextDouble(1, 600), centre, random.nextDouble(20, 500), bevel);
    }

    static StripPull anyStrip(SplittableRandom random) {
        double pull = random.nextDouble(30, 150);
        return StripPull.evenly(any(random), pull, pull * random.nextDouble(0.3, 1), random.nextInt(1, 9));
    }

    static WallScrew anyScrew(SplittableRandom random) {
        var screws = NumberedScrew.values();
        double strip = random.nextDouble(9, 36);
        double gravity = random.nextDouble(0.36, 0.6);
        double gap = random.nextBoolean() ? 0 : random.nextDouble(0, 20);
        var through = random.nextBoolean()
                ? ScrewedThrough.countersunk(strip, gravity, gap)
                : ScrewedThrough.roundHead(strip, gravity, gap, random.nextDouble(6, 20));
        return WallScrew.intoStud(
                screws[random.nextInt(screws.length)],
                strip + gap + random.nextDouble(60, 90),
                through,
                random.nextDouble(0.36, 0.6),
                LoadDuration.PERMANENT);
    }
}
