package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.assembly.Assembly;
import org.standwright.check.rules.Checks;
import org.standwright.design.WallDesign;
import org.standwright.design.built.CleatWall;
import org.standwright.design.stand.Clearances;
import org.standwright.design.wall.Judge;
import org.standwright.design.wall.built.Strip;
import org.standwright.design.wall.built.Unplaced;
import org.standwright.file.StartingWall;
import org.standwright.make.Product;
import org.standwright.solid.AssemblySolids;
import org.standwright.unit.Units;

/** Every wall that comes with the program, and those that a maker starts with. */
class PresetWallsTest {
    static Stream<WallDesign> walls() {
        return Presets.walls();
    }

    @ParameterizedTest
    @MethodSource("walls")
    void keepsTheRulesOfRowsAndItsBoardsApart(WallDesign design) {
        check(design);
    }

    @ParameterizedTest
    @MethodSource("walls")
    void hasNoStops(WallDesign design) {
        assertThat(Product.checked(design).stops()).isEmpty();
    }

    /** What the cut list asks for is what hangs on the wall, to the strip. */
    @ParameterizedTest
    @MethodSource("walls")
    void cutsWhatHangsOnTheWall(WallDesign design) {
        var product = Product.checked(design);
        double onWalls =
                strips(product).mapToDouble(strip -> strip.along().length()).sum();
        double cut = product.cutList().lines().stream()
                .filter(line -> line.part().name().equals("strip"))
                .mapToDouble(line -> line.count() * line.part().length())
                .sum();

        assertThat(cut).isCloseTo(onWalls, within(1e-6));
        assertThat(product.plan().materials()).isNotEmpty();
    }

    /** The report alone says where every strip is and is screwed, and what hangs where. */
    @ParameterizedTest
    @MethodSource("walls")
    void reportsWhatIsOnTheWall(WallDesign design) throws IOException {
        var product = Product.checked(design);
        var out = new ByteArrayOutputStream();
        product.writeReport(out);
        var report = new ObjectMapper().readTree(out.toByteArray());
        var wall = (CleatWall) product.furniture();

        double length = 0;
        for (var face : report.path("walls")) {
            for (var row : face.path("rows")) {
                for (var strip : row.path("strips")) {
                    length += strip.path("to").asDouble() - strip.path("from").asDouble();
                    assertThat(strip.path("studs").size()).isGreaterThanOrEqualTo(2);
                }
            }
        }
        assertThat(length)
                .isCloseTo(
                        strips(product)
                                .mapToDouble(strip -> strip.along().length())
                                .sum(),
                        within(1e-6));
        assertThat(report.path("holders")).hasSize(wall.holders().size());
        assertThat(report.path("notHung")).hasSize(wall.unplaced().size());
        assertThat(report.path("weights")).hasSize(wall.holders().size());
        assertThat(report.path("rules")).hasSize(Checks.WALL.size());
        assertThat(report.path("design").path("walls")).hasSize(design.walls().size());
    }

    @ParameterizedTest
    @MethodSource("walls")
    void makesClosedSolidsOfAllItsParts(WallDesign design) {
        var wall = (CleatWall) Product.checked(design).furniture();
        var solids = AssemblySolids.of(wall.assembly());

        assertThat(solids.solids()).hasSameSizeAs(wall.assembly().parts());
        assertThat(solids.mass()).isPositive();
    }

    @ParameterizedTest
    @MethodSource("walls")
    void givesTheSameBytesTwiceAndOnOneThread(WallDesign design) throws ExecutionException, InterruptedException {
        var first = Bytes.of(design);
        var alone = new ForkJoinPool(1);
        var again = alone.submit(() -> Bytes.of(design)).get();
        alone.shutdown();

        assertThat(again.keySet()).isEqualTo(first.keySet());
        first.forEach((name, bytes) ->
                assertThat(Arrays.equals(bytes, again.get(name))).as(name).isTrue());
    }

    @ParameterizedTest
    @CsvSource({
        "MM, 3600, 2400",
        "MM, 900, 2000",
        "MM, 16000, 6000",
        "MM, 2500, 600",
        "INCH, 3657.6, 2438.4",
        "INCH_64, 1219.2, 2743.2"
    })
    void startsAnyWallWithADesignThatCanBeBuilt(Units units, double width, double height) {
        var design = Presets.wall("wall", StartingWall.text(units, width, height));

        check(design);
        assertThat(Product.checked(design).stops()).isEmpty();
        assertThat(design.unit()).isEqualTo(units);
    }

    private static void check(WallDesign design) {
        var product = Product.checked(design);
        var wall = (CleatWall) product.furniture();

        wall.walls().forEach(face -> assertThat(Judge.faults(design, face)).isEmpty());
        var groups = wall.assembly().groups();
        int walls = wall.walls().size();
        Clearances.check(new Assembly("strips", groups.subList(0, walls), List.of()));
        if (groups.size() > walls) {
            Clearances.check(new Assembly("holders", groups.subList(walls, groups.size()), List.of()));
        }
        assertThat(wall.holders().size() + wall.unplaced().size())
                .isEqualTo(design.holders().size());
        assertThat(wall.unplaced()).extracting(Unplaced::why).doesNotContain("");
    }

    private static Stream<Strip> strips(Product product) {
        return ((CleatWall) product.furniture()).walls().stream().flatMap(wall -> wall.strips().stream());
    }
}
