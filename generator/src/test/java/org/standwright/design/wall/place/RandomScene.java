package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.Optional;
import java.util.SplittableRandom;
import org.standwright.design.wall.Obstacle.Kind;
import org.standwright.design.wall.Swing;
import org.standwright.design.wall.Swing.Side;
import org.standwright.design.wall.Things.Use;
import org.standwright.geom.Interval;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;

/** One to three walls with obstacles, doors, rows of strips with gaps, and holders that may not all fit. */
final class RandomScene {
    private static final Kind[] KINDS = {
        Kind.WINDOW, Kind.OUTLET, Kind.RADIATOR, Kind.BENCH, Kind.STAND, Kind.ELECTRICAL_PANEL, Kind.PIPE, Kind.CABINET
    };

    private final SplittableRandom random;
    private final Scene scene = new Scene();

    private RandomScene(long seed) {
        random = new SplittableRandom(seed);
    }

    static Scene of(long seed) {
        var made = new RandomScene(seed);
        made.walls();
        made.holders();
        return made.scene;
    }

    private void walls() {
        int walls = random.nextInt(1, 4);
        double lowest = between(800, 1000);
        double pitch = between(190, 420);
        int rows = random.nextInt(2, 6);
        for (int i = 0; i < walls; i++) {
            var wall = wall("wall " + (i + 1), between(1200, 3200));
            for (int zones = random.nextInt(0, 4); zones > 0; zones--) {
                zone(wall);
            }
            if (random.nextInt(3) == 0) {
                door(wall);
            }
            for (int row = 0; row < rows; row++) {
                wall.row(lowest + row * pitch, strips(wall, lowest + row * pitch));
            }
        }
    }

    private Scene.WallSketch wall(String name, double width) {
        return random.nextInt(4) > 0
                ? scene.wall(name, width, between(2200, 2800))
                : scene.wall(
                        name,
                        new Vec2(0, 0),
                        new Vec2(width, 0),
                        new Vec2(width, between(1200, 1800)),
                        new Vec2(width / 2, 2600),
                        new Vec2(0, between(1200, 1800)));
    }

    private void zone(Scene.WallSketch wall) {
        var kind = KINDS[random.nextInt(KINDS.length)];
        boolean stands = kind.isFurniture() || kind == Kind.ELECTRICAL_PANEL;
        double width = between(60, stands ? 900 : 500);
        double x = between(0, wall.width() - width);
        double y = stands ? 0 : between(600, 1500);
        double height = between(80, stands ? 1100 : 800);
        wall.zone(kind, new Rect(x, y, x + width, y + height), random.nextInt(2) == 0 ? 0 : between(20, 600));
    }

    private void door(Scene.WallSketch wall) {
        double width = between(500, 900);
        double x = between(0, wall.width() - width);
        wall.door(
                new Rect(x, 0, x + width, between(1700, 2050)),
                new Swing(random.nextInt(2) == 0 ? Side.LEFT : Side.RIGHT, between(60, 180), between(30, 80)));
    }

    /** On bare wall, now and then with a gap. */
    private Interval[] strips(Scene.WallSketch wall, double height) {
        var strips = new ArrayList<Interval>();
        for (var free : wall.bare().free(height - 88, height + 95)) {
            if (free.length() > 800 && random.nextInt(2) == 0) {
                double cut = free.from() + between(200, 500);
                strips.add(new Interval(free.from(), cut));
                strips.add(new Interval(cut + (random.nextInt(3) == 0 ? 0 : between(1, 250)), free.to()));
            } else if (free.length() > 200) {
                strips.add(free);
            }
        }
        return strips.toArray(Interval[]::new);
    }

    private void holders() {
        int holders = random.nextInt(4, 20);
        for (int i = 0; i < holders; i++) {
            double over = random.nextInt(4) == 0 ? between(0, 40) : 0;
            scene.holder(
                    "holder " + (i + 1),
                    new Rect(0, -between(40, 350), between(80, 800), between(75, 300)),
                    between(30, 400),
                    Use.values()[random.nextInt(5)],
                    between(0, 15),
                    random.nextInt(5) == 0,
                    Optional.empty(),
                    over);
        }
    }

    private double between(double from, double to) {
        return Math.round(random.nextDouble(from, to) * 10) / 10.0;
    }
}
