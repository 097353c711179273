package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.design.CuttingPlan;
import org.standwright.design.StockPlan;
import org.standwright.design.WallDesign;
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
import org.standwright.design.wall.Swing;
import org.standwright.design.wall.Things;
import org.standwright.design.wall.Things.Use;
import org.standwright.design.wall.Wall;
import org.standwright.design.wall.area.BareArea;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.Backing;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.MadeHolder;
import org.standwright.design.wall.built.Row;
import org.standwright.design.wall.built.Strip;
import org.standwright.design.wall.built.Stud;
import org.standwright.design.wall.built.WallFrame;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Interval;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/**
 * Small walls and holders for tests. Cleats are 18 mm thick and 90 mm high at 45°, 2 mm blunted: a strip is 88 mm high, a
 * holder is lifted 21 mm. Elbow at 1100 mm, eyes at 1600 mm.
 */
final class Scene {
    private static final SheetGood PLY = new SheetGood(
            new Material("plywood", 18, 680, Grain.ALONG_LENGTH), 2440, 1220, Optional.empty(), Optional.empty());
    static final Cleat CLEAT = new Cleat(PLY, 90, 45, 2, OptionalDouble.empty());

    private final List<WallSketch> walls = new ArrayList<>();
    private final List<MadeHolder> made = new ArrayList<>();

    /** One wall, studs 400 mm apart, rows with one strip from end to end. */
    static final class WallSketch {
        private final String name;
        private final List<Vec2> corners;
        private final List<Zone> zones = new ArrayList<>();
        private final List<Obstacle> obstacles = new ArrayList<>();
        private final List<Row> rows = new ArrayList<>();

        private WallSketch(String name, List<Vec2> corners) {
            this.name = name;
            this.corners = corners;
        }

        double width() {
            return new Outline(corners).bounds().x1();
        }

        WallSketch rows(double... heights) {
            for (double height : heights) {
                row(height, new Interval(0, width()));
            }
            return this;
        }

        WallSketch row(double height, Interval... strips) {
            int number = rows.size() + 1;
            rows.add(new Row(
                    number,
                    height,
                    IntStream.range(0, strips.length)
                            .mapToObj(i -> new Strip(
                                    name + " " + number + "." + (i + 1),
                                    number,
                                    strips[i],
                                    height,
                                    studs(strips[i]),
                                    List.of(44.0)))
                            .toList()));
            return this;
        }

        private List<Double> studs(Interval along) {
            return DoubleStream.iterate(200, x -> x < width(), x -> x + 400)
                    .filter(along::holds)
                    .boxed()
                    .toList();
        }

        WallSketch zone(Obstacle.Kind kind, Rect kept, double depth) {
            return zone(kind, kept, depth, Optional.empty());
        }

        WallSketch door(Rect itself, Swing swing) {
            return zone(Obstacle.Kind.DOOR, itself, 0, Optional.of(swing));
        }

        private WallSketch zone(Obstacle.Kind kind, Rect kept, double depth, Optional<Swing> swing) {
            zones.add(new Zone(zones.size(), kind.words(), kind, kept, kept, depth));
            obstacles.add(new Obstacle(
                    kind,
                    Optional.empty(),
                    kept.x0(),
                    kept.y0(),
                    OptionalDouble.of(kept.width()),
                    OptionalDouble.of(kept.height()),
                    depth,
                    0,
                    OptionalDouble.of(0),
                    swing,
                    Optional.empty()));
            return this;
        }

        BareArea bare() {
            return BareArea.of(new Outline(corners), zones);
        }

        private CleatedWall built(int number, WallFrame frame) {
            var outline = new Outline(corners);
            var studs = studs(new Interval(0, width()));
            var wall = new Wall(
                    name,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    List.of(),
                    new Framing.WoodStuds(12, OptionalDouble.of(400), 200, List.of(), 45, 0.42),
                    obstacles);
            return new CleatedWall(
                    number,
                    wall,
                    outline,
                    frame,
                    zones,
                    BareArea.of(outline, zones),
                    IntStream.range(0, studs.size())
                            .mapToObj(i -> new Stud(i + 1, studs.get(i), 45))
                            .toList(),
                    rows,
                    List.of(),
                    List.of());
        }
    }

    WallSketch wall(String name, double width, double height) {
        return wall(name, new Vec2(0, 0), new Vec2(width, 0), new Vec2(width, height), new Vec2(0, height));
    }

    WallSketch wall(String name, Vec2... corners) {
        var wall = new WallSketch(name, Arrays.asList(corners));
        walls.add(wall);
        return wall;
    }

    /** So wide, so far below and above the row's high edge. */
    static Rect area(double width, double below, double above) {
        return new Rect(0, -below, width, above);
    }

    Scene holder(String name, Rect area, double depth) {
        return holder(name, area, depth, Use.WEEKLY, 1, false, Optional.empty());
    }

    Scene holder(String name, Rect area, double depth, Spot spot) {
        return holder(name, area, depth, Use.WEEKLY, 1, false, Optional.of(spot));
    }

    Scene holder(String name, Rect area, double depth, Use use, double mass, boolean flammable, Optional<Spot> spot) {
        return holder(name, area, depth, use, mass, flammable, spot, 0);
    }

    /** @param over how far things stand out beyond the back to either side and below, mm */
    Scene holder(
            String name,
            Rect back,
            double depth,
            Use use,
            double mass,
            boolean flammable,
            Optional<Spot> spot,
            double over) {
        var things = new Things(1, 10, 10, 10, mass, use, flammable);
        made.add(new MadeHolder(
                new Holder.Shelf(name, things, spot, false, OptionalDouble.empty(), 0),
                new Box3(
                        new Vec3(back.x0() - over, -depth, back.y0() - over), new Vec3(back.x1() + over, 0, back.y1())),
                back,
                List.of(),
                List.of(),
                Vec3.ZERO,
                depth,
                4));
        return this;
    }

    /** The same walls and holders, but those that hang are hung there by hand. */
    Scene hungByHand(List<HungHolder> hung) {
        var other = new Scene();
        other.walls.addAll(walls);
        for (var holder : made) {
            var there = hung.stream().filter(any -> any.made().equals(holder)).findFirst();
            var spot = there.map(any -> new Spot(walls.get(any.wall() - 1).name, any.row(), any.x()));
            var things = holder.holder().things();
            other.holder(
                    holder.holder().name(),
                    holder.back(),
                    -holder.box().min().y(),
                    things.use(),
                    things.mass(),
                    things.flammable(),
                    spot,
                    -holder.box().min().x());
        }
        return other;
    }

    List<CleatedWall> walls() {
        var axes = List.of(Axis.X_PLUS, Axis.Y_MINUS, Axis.X_MINUS);
        var built = new ArrayList<CleatedWall>();
        var corner = Vec3.ZERO;
        for (int i = 0; i < walls.size(); i++) {
            var frame = new WallFrame(corner, axes.get(i));
            built.add(walls.get(i).built(i + 1, frame));
            corner = frame.apply(new Vec3(walls.get(i).width(), 0, 0));
        }
        return built;
    }

    List<MadeHolder> made() {
        return made;
    }

    WallDesign design() {
        var built = walls();
        var screw = new Screw("screw", 5, 3, 5, List.of(60.0, 80.0));
        return new WallDesign(
                "test wall",
                Units.MM,
                1000,
                new Person(1100, 1600),
                built.stream().map(CleatedWall::wall).toList(),
                CLEAT,
                new Rows.Fixed(900, 2100, 300),
                new Fixing(screw, OptionalDouble.empty(), 1, OptionalDouble.empty()),
                new Making(PLY, PLY, screw, 0.2),
                made.stream().map(MadeHolder::holder).toList(),
                new Saw(3, 5),
                Optional.empty(),
                StockPlan.NONE,
                CuttingPlan.PLAIN,
                List.of());
    }

    Arrangement arranged() {
        return Arrangement.of(design(), walls(), made);
    }

    /** One line for each holder: those that hang, then those that don't. */
    List<String> lines() {
        var arrangement = arranged();
        return Stream.concat(
                        arrangement.hung().stream().map(this::line),
                        arrangement.unplaced().stream()
                                .map(left -> left.holder().name() + ": " + left.why()))
                .toList();
    }

    private String line(HungHolder hung) {
        return String.format(
                Locale.ROOT,
                "%s: %s row %d at %.0f, %s",
                hung.name(),
                walls.get(hung.wall() - 1).name,
                hung.row(),
                hung.x(),
                text(hung.backing().by()));
    }

    private static String text(Backing.By by) {
        return switch (by) {
            case OWN_STRIP -> "on its own strip";
            case LOWER_STRIP -> "on a lower strip";
            case SPACER -> "on a spacer";
        };
    }
}
