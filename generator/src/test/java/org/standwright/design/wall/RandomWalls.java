package org.standwright.design.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.WallDesign;
import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Saw;
import org.standwright.design.wall.row.WallRows;
import org.standwright.unit.Units;

/** Designs of walls at random, one a seed, without holders: any outline, framing, obstacles and rows that can be said. */
public final class RandomWalls {
    private static final int ATTEMPTS = 60;
    private static final List<String> NAMES = List.of("west", "north", "east");

    private final SplittableRandom random;
    private final boolean metric;

    private RandomWalls(long seed, int attempt) {
        this.random = new SplittableRandom(1_000_003 * seed + attempt);
        this.metric = random.nextBoolean();
    }

    /** The first design of a seed whose rows can be built. */
    public static WallDesign buildable(long seed) {
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            var design = new RandomWalls(seed, attempt).design();
            try {
                WallRows.of(design);
                return design;
            } catch (ImpossibleDesignException refused) {
                // the next attempt
            }
        }
        throw new AssertionError("seed " + seed + ": none of " + ATTEMPTS + " attempts can be built");
    }

    private WallDesign design() {
        var draft = new WallDraft();
        draft.unit = metric ? Units.MM : Units.INCH;
        draft.person = new Person(between(950, 1200), between(1400, 1800));
        draft.cleat = new Cleat(
                WallDraft.sheet(between(12, 22)),
                between(65, 120),
                chance(3) ? 30 : 45,
                between(0, 3),
                chance(2) ? OptionalDouble.of(between(500, 2400)) : OptionalDouble.empty());
        draft.rows = rows(draft.cleat);
        draft.fixing = new Fixing(
                WallDraft.SCREW,
                chance(4) ? OptionalDouble.of(between(60, 90)) : OptionalDouble.empty(),
                1 + random.nextInt(2),
                chance(4) ? OptionalDouble.of(12) : OptionalDouble.empty());
        draft.saw = new Saw(3, between(0, 10));
        var walls = new ArrayList<Wall>();
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            walls.add(wall(NAMES.get(i)));
        }
        draft.walls = walls;
        return draft.design();
    }

    private Rows rows(Cleat cleat) {
        double lowest = between(150, 1200);
        double highest = lowest + between(0, 1400);
        double densest = cleat.densestPitch();
        return switch (random.nextInt(4)) {
            case 0 -> new Rows.Fixed(lowest, highest, between(densest + 2, 500));
            case 1 -> new Rows.Even(lowest, highest, between(densest + 2, 500));
            case 2 -> new Rows.Reach(lowest, highest, between(densest + 2, 350), between(350, 600));
            default -> new Rows.Densest(lowest, highest);
        };
    }

    private Wall wall(String name) {
        double width = between(900, 5000);
        double height = between(2000, 2800);
        var outline = outline(width, height);
        boolean sized = outline.isEmpty();
        var obstacles = new ArrayList<Obstacle>();
        int count = random.nextInt(5);
        for (int i = 0; i < count; i++) {
            obstacles.add(obstacle(width, height));
        }
        return new Wall(
                name,
                sized ? OptionalDouble.of(width) : OptionalDouble.empty(),
                sized ? OptionalDouble.of(height) : OptionalDouble.empty(),
                outline,
                framing(width),
                obstacles);
    }

    /** Corners of a slope, a gable or a step; none for a rectangle. */
    private List<Point2> outline(double width, double height) {
        double knee = between(900, 1900);
        double ridge = width * random.nextDouble(0.2, 0.8);
        var floor = List.of(new Point2(0, 0), new Point2(width, 0));
        var above = switch (random.nextInt(6)) {
            case 0 -> List.of(new Point2(width, height), new Point2(0, knee));
            case 1 -> List.of(new Point2(width, knee), new Point2(ridge, height), new Point2(0, knee));
            case 2 ->
                List.of(
                        new Point2(width, knee),
                        new Point2(ridge, knee),
                        new Point2(ridge, height),
                        new Point2(0, height));
            default -> List.<Point2>of();
        };
        if (above.isEmpty()) {
            return above;
        }
        var all = new ArrayList<>(floor);
        all.addAll(above);
        return all;
    }

    private Framing framing(double width) {
        boolean listed = chance(3);
        double spacing = metric ? random.nextInt(300, 626) : 25.4 * (chance(2) ? 16 : 24);
        var even = listed ? OptionalDouble.empty() : OptionalDouble.of(spacing);
        double first = listed ? 0 : between(0, Math.min(spacing, width));
        var positions = listed ? positions(width) : List.<Double>of();
        double covering = between(0, 20);
        return switch (random.nextInt(4)) {
            case 0 -> new Framing.SteelStuds(covering, even, first, positions, 40);
            case 1 -> new Framing.Masonry(covering, even, first, positions, "nylon anchor 8 mm", 8, 40);
            default -> new Framing.WoodStuds(covering, even, first, positions, 38, 0.42);
        };
    }

    /** Studs at any distance, now and then two side by side. */
    private List<Double> positions(double width) {
        var positions = new ArrayList<Double>();
        double place = between(0, 200);
        while (place <= width) {
            positions.add(place);
            place += chance(6) ? 38 : between(120, 650);
        }
        return positions;
    }

    private Obstacle obstacle(double width, double height) {
        var kinds = Obstacle.Kind.values();
        var kind = kinds[random.nextInt(kinds.length)];
        boolean plate = kind == Obstacle.Kind.OUTLET || kind == Obstacle.Kind.SWITCH;
        double wide = plate ? between(70, 150) : between(100, Math.min(1000, width * 0.6));
        double high = plate ? between(70, 120) : between(200, kind == Obstacle.Kind.DOOR ? 2000 : 1000);
        double bottom = kind.isFurniture() ? 0 : between(0, Math.max(1, height - high - 300));
        return new Obstacle(
                kind,
                chance(3) ? Optional.of("old " + kind.words()) : Optional.empty(),
                between(0, width - wide),
                bottom,
                OptionalDouble.of(wide),
                OptionalDouble.of(high),
                chance(2) ? between(0, 400) : 0,
                kind == Obstacle.Kind.DOOR || kind == Obstacle.Kind.WINDOW ? between(0, 90) : 0,
                chance(4) ? OptionalDouble.of(between(0, 120)) : OptionalDouble.empty(),
                kind == Obstacle.Kind.DOOR && chance(2)
                        ? Optional.of(new Swing(Swing.Side.LEFT, between(60, 170), 40))
                        : Optional.empty(),
                kind == Obstacle.Kind.STAND
                        ? Optional.of(new StandBox("stand", wide, between(300, 700), high))
                        : Optional.empty());
    }

    /** On the tape of the design: whole millimetres or sixteenths of an inch. */
    private double between(double least, double most) {
        double step = metric ? 1 : 25.4 / 16;
        return Math.round(random.nextDouble(least, Math.max(least + 1e-6, most)) / step) * step;
    }

    private boolean chance(int once) {
        return random.nextInt(once) == 0;
    }
}
