package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.cutlist.CutList;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.Effort;
import org.standwright.sheet.plan.ImpossiblePlanException;
import org.standwright.sheet.plan.SheetPlanner;
import org.standwright.solid.ClosedSolids;

/** What must hold for any stand that can be built, over random design files. */
class RandomStandsTest {
    private static final Pattern NEAREST = Pattern.compile("nearest possible working height is ([^,]+?)[.,]( |$)");

    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));

    static LongStream seeds() {
        return LongStream.rangeClosed(1, FULL ? 1000 : 40);
    }

    static LongStream seedsToMesh() {
        return LongStream.rangeClosed(1, FULL ? 60 : 5);
    }

    static LongStream seedsToWrite() {
        return LongStream.rangeClosed(1, FULL ? 30 : 3);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void closesFitsAndOpens(long seed) throws IOException {
        var text = RandomStands.buildableText(seed);
        try {
            holds(text);
        } catch (AssertionError | RuntimeException failure) {
            var folder = Files.createDirectories(Path.of("target", "failed-designs"));
            var file = Files.writeString(folder.resolve("random-stand-" + seed + ".json"), text);
            throw new AssertionError("seed " + seed + " fails; its design is " + file, failure);
        }
    }

    /** A refused height names the nearest one; with that in its place the height is not what stands against it any more. */
    @ParameterizedTest
    @MethodSource("seeds")
    void namesANearestHeightThatIsNotRefused(long seed) {
        for (int attempt = 0; attempt < RandomStands.ATTEMPTS; attempt++) {
            var text = RandomStands.text(seed, attempt);
            var refused = RandomStands.refusal(text)
                    .filter(refusal -> NEAREST.matcher(refusal.getMessage()).find());
            if (refused.isPresent()) {
                var nearest = NEAREST.matcher(refused.get().getMessage());
                assertThat(nearest.find()).as(refused.get().getMessage()).isTrue();
                var mended = text.replaceFirst(
                        "\"workingHeight\": (\\{[^}]*}|\"[^\"]*\")", "\"workingHeight\": \"" + nearest.group(1) + "\"");
                assertThat(RandomStands.refusal(mended).map(ImpossibleDesignException::field))
                        .as("%s, seed %d, attempt %d", refused.get().getMessage(), seed, attempt)
                        .isNotEqualTo(Optional.of("/workingHeight"));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seedsToMesh")
    void hasClosedSolidsOfTheVolumeThatTheirFeaturesLeave(long seed) {
        ClosedSolids.check(build(RandomStands.buildableText(seed)).assembly());
    }

    @ParameterizedTest
    @MethodSource("seedsToWrite")
    void givesTheSameBytesTwice(long seed) {
        var text = RandomStands.buildableText(seed);
        var again = Bytes.of(RandomStands.design(text));

        Bytes.of(RandomStands.design(text))
                .forEach((name, bytes) -> assertThat(again.remove(name))
                        .as("%s, seed %d", name, seed)
                        .isEqualTo(bytes));
        assertThat(again).isEmpty();
    }

    /** Whatever the shop has and asks for, the stand can be cut as drawn or is refused for a reason. */
    @ParameterizedTest
    @MethodSource("seeds")
    void isCutAsDrawnOrRefused(long seed) {
        int planned = 0;
        // boards at hand and saws refuse many a design more
        for (int attempt = 0; attempt < 2 * RandomStands.ATTEMPTS && planned == 0; attempt++) {
            var text = RandomStands.cut(seed, attempt);
            try {
                var stand = build(text);
                SheetPlanner.plan(Stock.of(stand.design()), CutList.of(stand), Effort.QUICK);
                planned++;
            } catch (ImpossibleDesignException | ImpossiblePlanException refused) {
                assertThat(refused.getMessage()).isNotBlank();
            } catch (RuntimeException failure) {
                throw new AssertionError("seed " + seed + ", attempt " + attempt + " fails: " + text, failure);
            }
        }
        assertThat(planned).as("stands planned with seed %d", seed).isPositive();
    }

    static Stand build(String text) {
        return StandBuilder.build(RandomStands.design(text));
    }

    private static void holds(String text) {
        var stand = build(text);
        assertThat(stand.stack().sum()).isCloseTo(stand.stack().workingHeight(), within(1e-6));
        Clearances.check(stand.assembly());

        var cutList = CutList.of(stand);
        var plan = SheetPlanner.plan(Stock.of(stand.design()), cutList);
        for (var material : plan.materials()) {
            double onList = cutList.lines().stream()
                    .filter(line -> line.material().equals(material.material()))
                    .mapToDouble(line -> (double) SheetUnit.up(line.part().roughLength())
                            * SheetUnit.up(line.part().roughWidth())
                            * line.count())
                    .sum();
            assertThat((double) material.pieceArea()).isEqualTo(onList);
            assertThat(material.sheets().size())
                    .isGreaterThanOrEqualTo((int) material.proof().least());
        }
        assertThat(stand.assembly().parts())
                .hasSameSizeAs(cutList.lines().stream()
                        .flatMap(line -> line.members().stream())
                        .toList());
    }
}
