package org.standwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.Obstacle.Kind;
import org.standwright.design.wall.Rows;
import org.standwright.design.wall.Swing;
import org.standwright.design.wall.Things;
import org.standwright.design.wall.Things.Use;
import org.standwright.design.wall.Wall;
import org.standwright.design.wall.WallDraft;

/**
 * A wall of 6 x 2.7 m with 25 obstacles and 60 holders, and one of ten times the area, obstacles and holders, on three
 * walls of 16 x 3.375 m, which is as long as a wall may be.
 */
final class SampleWall {
    private static final int HOLDERS = 60;

    /** How much closer together obstacles are than on the wall of 6 m. */
    private final double closer;

    private final List<Obstacle> obstacles = new ArrayList<>();

    private SampleWall(double closer) {
        this.closer = closer;
    }

    static WallDesign once() {
        var sample = new SampleWall(1);
        return design(List.of(sample.wall("north", 6000, 2700, 1)), 2500);
    }

    static WallDesign tenfold() {
        var walls = List.of(
                new SampleWall(0.8).wall("west", 16000, 3375, 3),
                new SampleWall(0.8).wall("north", 16000, 3375, 3),
                new SampleWall(0.6).wall("east", 16000, 3375, 4));
        return design(walls, 3150).with(holders(10 * HOLDERS));
    }

    private static WallDesign design(List<Wall> walls, double highest) {
        var draft = new WallDraft();
        draft.walls = walls;
        draft.rows = new Rows.Even(400, highest, 210);
        return draft.design().with(holders(HOLDERS));
    }

    private static List<Holder> holders(int count) {
        return IntStream.range(0, count)
                .mapToObj(k -> holder("holder " + (k + 1), k % HOLDERS))
                .toList();
    }

    private Wall wall(String name, double width, double height, int times) {
        for (int i = 0; i < times; i++) {
            obstacles(i * 6000.0);
        }
        return new Wall(
                name,
                OptionalDouble.of(width),
                OptionalDouble.of(height),
                List.of(),
                new Framing.WoodStuds(12.7, OptionalDouble.of(400), 200, List.of(), 38.1, 0.42),
                obstacles);
    }

    private void obstacles(double x) {
        var swing = Optional.of(new Swing(Swing.Side.RIGHT, 170, 80));
        add(Kind.DOOR, x + 200, 0, 860, 2030, 0, swing);
        add(Kind.WINDOW, x + 2500, 1500, 700, 600, 0, Optional.empty());
        add(Kind.WINDOW, x + 4700, 1500, 700, 600, 0, Optional.empty());
        add(Kind.RADIATOR, x + 2550, 100, 600, 300, 120, Optional.empty());
        add(Kind.BENCH, x + 3600, 0, 900, 300, 600, Optional.empty());
        add(Kind.BEAM, x + 100, 2620, 3500, 80, 100, Optional.empty());
        add(Kind.PIPE, x + 5850, 0, 40, 2600, 60, Optional.empty());
        for (int i = 0; i < 12; i++) {
            add(Kind.OUTLET, x + 1300 + i * 360, 180, 80, 80, 0, Optional.empty());
        }
        for (int i = 0; i < 6; i++) {
            add(Kind.SWITCH, x + 2050 + i * 620, 1180, 80, 80, 0, Optional.empty());
        }
    }

    private void add(
            Kind kind, double x, double bottom, double width, double height, double depth, Optional<Swing> swing) {
        obstacles.add(new Obstacle(
                kind,
                Optional.empty(),
                x * closer,
                bottom,
                OptionalDouble.of(width),
                OptionalDouble.of(height),
                depth,
                kind == Kind.WINDOW ? 40 : 0,
                OptionalDouble.empty(),
                swing,
                Optional.empty()));
    }

    private static Holder holder(String name, int k) {
        var use = Use.values()[k % 4];
        return switch (k % 5) {
            case 0 -> new Holder.Bores(name, things(3 + k % 3, 30, 30, 90, use), Optional.empty(), false, 14);
            case 1 -> new Holder.Slots(name, things(3 + k % 4, 34, 34, 100, use), Optional.empty(), false, 14);
            case 2 ->
                new Holder.Shelf(name, things(2, 70, 70, 100, use), Optional.empty(), true, OptionalDouble.empty(), 20);
            case 3 ->
                new Holder.Tray(
                        name, things(1, 180, 120, 50, use), Optional.empty(), false, OptionalDouble.empty(), 40);
            default -> new Holder.Hooks(name, things(2, 80, 30, 150, use), Optional.empty(), false, "hook", 30);
        };
    }

    private static Things things(int count, double width, double depth, double height, Use use) {
        return new Things(count, width, depth, height, 0.3, use, false);
    }
}
