package org.standwright.bench;

import java.util.Locale;
import java.util.function.Supplier;
import org.standwright.check.rules.Checks;
import org.standwright.check.wall.HungWall;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.build.WallBuilder;
import org.standwright.solid.AssemblySolids;

/**
 * How long a wall of cleats takes without its sheets: 6 x 2.7 m with 25 obstacles and 60 holders, and ten times as much of
 * it; aims 100 ms, and 12 times as long.
 */
public final class WallBench {
    private static final double AIM = 100;
    private static final double GROWTH = 12;

    private WallBench() {}

    public static void main(String[] args) {
        var once = SampleWall.once();
        var tenfold = SampleWall.tenfold();
        var built = WallBuilder.build(once);
        System.out.printf(
                Locale.ROOT,
                "1 x: %d strips, %d holders hung, %d not, %d parts%n",
                built.walls().get(0).strips().size(),
                built.holders().size(),
                built.unplaced().size(),
                built.assembly().parts().size());
        System.out.printf("%-34s %9s %9s %9s %8s%n", "ms, warm", "1 x", "p95", "10 x", "growth");
        row("rows, holders, places, boards", () -> WallBuilder.build(once), () -> WallBuilder.build(tenfold));
        row("the same, weighed and checked", () -> checked(once), () -> checked(tenfold));
    }

    private static Object checked(WallDesign design) {
        var wall = WallBuilder.build(design);
        return Checks.of(HungWall.of(wall, AssemblySolids.of(wall.assembly())));
    }

    private static void row(String what, Supplier<Object> once, Supplier<Object> tenfold) {
        var small = Timing.warm(once::get, 20, 3000);
        var large = Timing.warm(tenfold::get, 5, 3000);
        double growth = large.median() / small.median();
        System.out.printf(
                Locale.ROOT,
                "%-34s %9.1f %9.1f %9.1f %7.1fx%s%n",
                what,
                small.median(),
                small.p95(),
                large.median(),
                growth,
                small.median() <= AIM && growth <= GROWTH ? "" : "  missed");
    }
}
