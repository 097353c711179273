package org.standwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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

/** A wall of 6 x 2.7 m with 25 obstacles and 60 holders, once or several times side by side. */
final class SampleWall {
    private static final double WIDTH = 6000;
    private static final int HOLDERS = 60;

    private final List<Obstacle> obstacles = new ArrayList<>();
    private final List<Holder> holders = new ArrayList<>();

    private SampleWall() {}

    static WallDesign of(int times) {
        var sample = new SampleWall();
        for (int i = 0; i < times; i++) {
            sample.obstacles(i * WIDTH);
            for (int k = 0; k < HOLDERS; k++) {
                sample.holders.add(holder("holder " + (i * HOLDERS + k + 1), k));
            }
        }
        var framing = new Framing.WoodStuds(12.7, OptionalDouble.of(400), 200, List.of(), 38.1, 0.42);
        var draft = new WallDraft();
        draft.walls = List.of(new Wall(
                "north",
                OptionalDouble.of(times * WIDTH),
                OptionalDouble.of(2700),
                List.of(),
                framing,
                sample.obstacles));
        draft.rows = new Rows.Even(400, 2500, 210);
        return draft.design().with(sample.holders);
    }

    private void obstacles(double x) {
        var swing = Optional.of(new Swing(Swing.Side.RIGHT, 170, 80));
        add(Kind.DOOR, x + 200, 0, 860, 2030, 0, swing);
        add(Kind.WINDOW, x + 2500, 1500, 700, 600, 0, Optional.empty());
        add(Kind.WINDOW, x + 4700, 1500, 700, 600, 0, Optional.empty());
        add(Kind.RADIATOR, x + 2550, 100, 600, 300, 120, Optional.empty());
        add(Kind.BENCH, x + 3600, 0, 900, 300, 600, Optional.empty());
        add(Kind.BEAM, x + 100, 2620, 5800, 80, 100, Optional.empty());
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
                x,
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
