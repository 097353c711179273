package org.standwright.design.wall;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.design.CuttingPlan;
import org.standwright.design.StockPlan;
import org.standwright.design.WallDesign;
import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Screw;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/** A design of walls that a test changes before it takes it; plain unless it does. */
public final class WallDraft {
    public static final Screw SCREW =
            new Screw("wood screw 5", 5, 3, 5.5, List.of(25.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 100.0));

    public Units unit = Units.MM;
    public Person person = new Person(1100, 1600);
    public List<Wall> walls = List.of(wall("north", 3000, 2400));
    public Cleat cleat = cleat(80, 45, 2, OptionalDouble.empty());
    public Rows rows = new Rows.Fixed(600, 2000, 400);
    public Fixing fixing = new Fixing(SCREW, OptionalDouble.empty(), 1, OptionalDouble.empty());
    public Saw saw = new Saw(3, 5);

    public WallDesign design() {
        var making = new Making(sheet(12), sheet(6), SCREW, 0.2);
        return new WallDesign(
                "wall",
                unit,
                1000,
                person,
                walls,
                cleat,
                rows,
                fixing,
                making,
                List.of(),
                saw,
                Optional.empty(),
                StockPlan.NONE,
                CuttingPlan.PLAIN,
                List.of());
    }

    public WallDraft walls(Wall... all) {
        walls = List.of(all);
        return this;
    }

    public WallDraft rows(Rows other) {
        rows = other;
        return this;
    }

    public WallDraft cleat(Cleat other) {
        cleat = other;
        return this;
    }

    public WallDraft fixing(Fixing other) {
        fixing = other;
        return this;
    }

    public WallDraft unit(Units other) {
        unit = other;
        return this;
    }

    public static SheetGood sheet(double thickness) {
        return new SheetGood(
                new Material("plywood " + thickness, thickness, 680, Grain.ALONG_LENGTH),
                2500,
                1250,
                Optional.empty(),
                Optional.empty());
    }

    /** 18 mm thick. */
    public static Cleat cleat(double face, double tilt, double blunt, OptionalDouble longest) {
        return new Cleat(sheet(18), face, tilt, blunt, longest);
    }

    /** A rectangle with studs every 400 mm from 400 mm. */
    public static Wall wall(String name, double width, double height, Obstacle... obstacles) {
        return new Wall(
                name,
                OptionalDouble.of(width),
                OptionalDouble.of(height),
                List.of(),
                spaced(400, 400),
                List.of(obstacles));
    }

    /** The same wall with other framing. */
    public static Wall framed(Wall wall, Framing framing) {
        return new Wall(wall.name(), wall.width(), wall.height(), wall.outline(), framing, wall.obstacles());
    }

    /** A wall with these corners and studs every 400 mm from 400 mm. */
    public static Wall cornered(String name, List<Point2> corners, Obstacle... obstacles) {
        return new Wall(
                name, OptionalDouble.empty(), OptionalDouble.empty(), corners, spaced(400, 400), List.of(obstacles));
    }

    public static Framing spaced(double spacing, double first) {
        return new Framing.WoodStuds(12.5, OptionalDouble.of(spacing), first, List.of(), 38, 0.42);
    }

    public static Framing listed(Double... positions) {
        return new Framing.WoodStuds(12.5, OptionalDouble.empty(), 0, Arrays.asList(positions), 38, 0.42);
    }

    public static Obstacle obstacle(Obstacle.Kind kind, double x, double bottom, double width, double height) {
        return new Obstacle(
                kind,
                Optional.empty(),
                x,
                bottom,
                OptionalDouble.of(width),
                OptionalDouble.of(height),
                0,
                0,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** The same with a casing around it. */
    public static Obstacle cased(Obstacle plain, double casing) {
        return new Obstacle(
                plain.kind(),
                plain.name(),
                plain.x(),
                plain.bottom(),
                plain.width(),
                plain.height(),
                plain.depth(),
                casing,
                plain.margin(),
                plain.swing(),
                plain.stand());
    }
}
