package org.standwright.design.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Row;
import org.standwright.design.wall.built.Strip;
import org.standwright.design.wall.row.StripParts;
import org.standwright.design.wall.row.StripScrews;
import org.standwright.design.wall.row.WallRows;
import org.standwright.geom.Interval;

/** What must hold for the rows of any walls. */
class RandomWallsTest {
    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));

    static LongStream seeds() {
        return LongStream.range(0, FULL ? 2000 : 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void keepsStripsOnStudsAndOnBareWall(long seed) {
        var design = RandomWalls.buildable(seed);

        for (var wall : WallRows.of(design)) {
            assertThat(Judge.faults(design, wall)).as("seed %d", seed).isEmpty();
        }
    }

    /** One point a cell varies less than the same number anywhere, whose standard error this is. */
    @ParameterizedTest
    @MethodSource("seeds")
    void measuresTheBareAreaThatRandomPointsFind(long seed) {
        for (var wall : WallRows.of(RandomWalls.buildable(seed))) {
            double box = wall.outline().bounds().area();
            double share = wall.bare().size() / box;
            double error = Math.sqrt(share * (1 - share) / PlainGeometry.POINTS);

            assertThat(PlainGeometry.bareShare(wall, new SplittableRandom(seed)))
                    .as("seed %d, wall %d", seed, wall.number())
                    .isCloseTo(share, within(4 * error + 1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void makesEachStripAPartOfItsLengthClearOfAllOthers(long seed) {
        var design = RandomWalls.buildable(seed);
        var walls = WallRows.of(design);
        var parts = walls.stream()
                .flatMap(wall -> StripParts.of(wall, design.cleat(), StripScrews.of(design)).stream())
                .toList();

        assertThat(parts.stream().mapToDouble(part -> part.part().length()).sum())
                .isCloseTo(
                        walls.stream()
                                .flatMap(wall -> wall.strips().stream())
                                .mapToDouble(strip -> strip.along().length())
                                .sum(),
                        within(1e-6));
        assertThat(parts).extracting(PlacedPart::label).doesNotHaveDuplicates();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(parts.get(i).box().overlap(parts.get(j).box()))
                        .as(
                                "seed %d: %s, %s",
                                seed, parts.get(i).label(), parts.get(j).label())
                        .isLessThanOrEqualTo(1e-9);
            }
        }
    }

    @Test
    void everyKindOfObstacleOfRowsAndOfFramingIsAmongThem() {
        var designs = LongStream.range(0, 200).mapToObj(RandomWalls::buildable).toList();
        var walls = designs.stream().flatMap(design -> design.walls().stream()).toList();

        assertThat(walls.stream().flatMap(wall -> wall.obstacles().stream()).map(Obstacle::kind))
                .contains(Obstacle.Kind.values());
        assertThat(designs.stream().map(design -> design.rows().getClass()).distinct())
                .hasSize(4);
        assertThat(walls.stream().map(wall -> wall.framing().getClass()).distinct())
                .hasSize(3);
        assertThat(designs.stream().map(design -> design.walls().size()).distinct())
                .hasSize(3);
        assertThat(designs.stream()
                        .flatMap(design -> WallRows.of(design).stream())
                        .flatMap(wall -> wall.rows().stream())
                        .filter(row -> row.strips().size() > 1))
                .as("rows of several strips")
                .hasSizeGreaterThan(100);
    }

    @Test
    void theJudgeNoticesAScrewBesideItsStud() {
        assertThat(broken(strip -> new Strip(
                        strip.label(),
                        strip.row(),
                        strip.along(),
                        strip.top(),
                        List.of(strip.studs().get(0) + 7, strip.studs().get(1)),
                        strip.screws())))
                .anyMatch(fault -> fault.contains("beside the studs"));
    }

    @Test
    void theJudgeNoticesAStripThatIsTooLong() {
        assertThat(broken(strip -> new Strip(
                        strip.label(),
                        strip.row(),
                        new Interval(strip.along().from(), strip.along().to() + 60),
                        strip.top(),
                        strip.studs(),
                        strip.screws())))
                .anyMatch(fault -> fault.contains("overhangs too far on the right"));
    }

    @Test
    void theJudgeNoticesAStripBeforeAnObstacle() {
        var door = WallDraft.obstacle(Obstacle.Kind.DOOR, 1500, 0, 900, 2000);
        var design =
                new WallDraft().walls(WallDraft.wall("north", 3000, 2400, door)).design();
        var across = new Strip("across", 1, new Interval(1100, 2500), 1000, List.of(1200.0, 1600.0), List.of(31.0));

        assertThat(Judge.faults(design, with(WallRows.of(design).get(0), across)))
                .contains("across crosses what 'door' keeps free", "across is too near 'door'");
    }

    @Test
    void theJudgeNoticesAStripOutOfTheWall() {
        var design = new WallDraft().design();
        var out = new Strip("out", 1, new Interval(2350, 3050), 1000, List.of(2400.0, 2800.0), List.of(31.0));

        assertThat(Judge.faults(design, with(WallRows.of(design).get(0), out))).contains("out leaves the wall");
    }

    @Test
    void theJudgeNoticesJointsAboveEachOther() {
        var design = new WallDraft().design();
        var wall = WallRows.of(design).get(0);
        var rows = List.of(jointed(1, 600), jointed(2, 1000));

        assertThat(Judge.faults(design, with(wall, rows)))
                .containsExactly("row 2 has a joint in a bay where row 1 has one");
    }

    private static Row jointed(int row, double height) {
        return new Row(
                row,
                height,
                List.of(
                        new Strip("left", row, new Interval(300, 900), height, List.of(400.0, 800.0), List.of(31.0)),
                        new Strip(
                                "right",
                                row,
                                new Interval(1100, 1700),
                                height,
                                List.of(1200.0, 1600.0),
                                List.of(31.0))));
    }

    /** What the judge says of a plain wall whose first strip is changed to have two screws and then so. */
    private static List<String> broken(UnaryOperator<Strip> change) {
        var draft = new WallDraft().walls(WallDraft.wall("north", 1100, 2400));
        var wall = WallRows.of(draft.design()).get(0);
        assertThat(Judge.faults(draft.design(), wall)).isEmpty();
        return Judge.faults(
                draft.design(), with(wall, change.apply(wall.strips().get(0))));
    }

    private static CleatedWall with(CleatedWall wall, Strip only) {
        return with(wall, List.of(new Row(1, only.top(), List.of(only))));
    }

    private static CleatedWall with(CleatedWall wall, List<Row> rows) {
        return new CleatedWall(
                wall.number(),
                wall.wall(),
                wall.outline(),
                wall.frame(),
                wall.zones(),
                wall.bare(),
                wall.studs(),
                rows,
                wall.shortRuns(),
                wall.notes());
    }
}
