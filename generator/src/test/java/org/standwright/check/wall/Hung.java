package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.check.Finding;
import org.standwright.check.Rule;
import org.standwright.design.CuttingPlan;
import org.standwright.design.StockPlan;
import org.standwright.design.WallDesign;
import org.standwright.design.built.CleatWall;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Screw;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.Fixing;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.Making;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.Person;
import org.standwright.design.wall.Rows;
import org.standwright.design.wall.Spot;
import org.standwright.design.wall.Things;
import org.standwright.design.wall.Wall;
import org.standwright.design.wall.WallDraft;
import org.standwright.design.wall.build.WallBuilder;
import org.standwright.design.wall.built.Backing;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;
import org.standwright.unit.Units;

/**
 * One wall 1219.2 mm wide in the sizes of the worked example of references 3.8, which a test changes before it takes it:
 * studs 406.4 mm apart at 406.4 and 812.8 mm, plasterboard 1/2 in, strips of 3/4 in plywood 3 1/2 in high, not blunted,
 * #10 x 3 in, one row at 1200 mm. So the middle of the bevel is 3.125 in over the strip's lower edge and the screw 1.375 in.
 */
final class Hung {
    static final double INCH = 25.4;
    static final double POUND = 4.4482216152605;
    static final double STANDARD = 9.80665;

    double screw = 0.190 * INCH;
    OptionalDouble length = OptionalDouble.of(3 * INCH);
    int perStud = 1;
    OptionalDouble washer = OptionalDouble.empty();
    double width = 1219.2;
    Framing framing = studs(406.4, 812.8);
    Rows rows = new Rows.Fixed(1200, 1200, 400);
    List<Obstacle> obstacles = List.of();
    List<Holder> holders = List.of(panel("unit", 10));

    static Framing studs(Double... places) {
        return new Framing.WoodStuds(0.5 * INCH, OptionalDouble.empty(), 0, List.of(places), 38.1, 0.42);
    }

    /** 406.4 mm wide, so that it hangs from stud to stud, and 300 mm high. */
    static Holder.Panel panel(String name, double mass) {
        return panel(name, mass, 406.4, false, Optional.of(new Spot("north", 1, 406.4)));
    }

    static Holder.Panel panel(String name, double mass, double width, boolean lock, Optional<Spot> place) {
        return new Holder.Panel(
                name, new Things(1, 100, 100, 100, mass, Things.Use.WEEKLY, false), place, lock, width, 300);
    }

    static Holder.Shelf shelf(String name, Things things, double x) {
        return new Holder.Shelf(name, things, Optional.of(new Spot("north", 1, x)), false, OptionalDouble.empty(), 0);
    }

    WallDesign design() {
        var family = new Screw("#10", screw, 3, 5, List.of(50.8, 63.5, 76.2, 88.9, 101.6));
        return new WallDesign(
                "wall",
                Units.MM,
                1000,
                new Person(1050, 1600),
                List.of(new Wall(
                        "north", OptionalDouble.of(width), OptionalDouble.of(2400), List.of(), framing, obstacles)),
                new Cleat(WallDraft.sheet(0.75 * INCH), 3.5 * INCH, 45, 0, OptionalDouble.empty()),
                rows,
                new Fixing(family, length, perStud, washer),
                new Making(
                        WallDraft.sheet(18),
                        WallDraft.sheet(6),
                        new Screw("#8", 4.2, 2.5, 4.5, List.of(16.0, 20.0, 25.0, 30.0, 35.0)),
                        0.2),
                holders,
                new Saw(3, 5),
                Optional.empty(),
                StockPlan.NONE,
                CuttingPlan.PLAIN,
                List.of());
    }

    HungWall hung() {
        return hung(design());
    }

    static HungWall hung(WallDesign design) {
        var wall = WallBuilder.build(design);
        return HungWall.of(wall, AssemblySolids.of(wall.assembly(), Fineness.FILE));
    }

    /** The wall with the first holder as heavy as this, its mass so far out and its lower back so far below the bevel. */
    HungWall worked(double newtons, double out, double drop) {
        var built = hung();
        var first = built.loads().get(0);
        double rise = built.design().cleat().rise();
        var old = first.holder();
        var holder = new HungHolder(
                old.made(),
                old.wall(),
                old.row(),
                old.rowHeight(),
                old.x(),
                new Backing(Backing.By.SPACER, drop + rise / 2),
                old.byHand());
        double mass = newtons / STANDARD;
        var loads = new ArrayList<>(built.loads());
        loads.set(0, new HeldLoad(holder, first.wood(), mass - first.wood(), out, first.along()));
        var wall = built.wall();
        var holders = new ArrayList<>(wall.holders());
        holders.set(0, holder);
        return new HungWall(
                new CleatWall(wall.design(), wall.screwing(), wall.walls(), holders, wall.unplaced(), wall.assembly()),
                loads);
    }

    static List<Finding> found(Rule<HungWall> rule, HungWall wall) {
        return rule.check(wall);
    }

    static Finding only(Rule<HungWall> rule, HungWall wall) {
        var findings = rule.check(wall);
        if (findings.size() != 1) {
            throw new AssertionError("findings of " + rule.text().name() + ": "
                    + findings.stream().map(Finding::message).toList());
        }
        return findings.get(0);
    }

    static double figure(Rule<HungWall> rule, HungWall wall) {
        return only(rule, wall).gauge().orElseThrow().figure();
    }
}
