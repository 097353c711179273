package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.file.StartingFile;
import org.standwright.make.Product;
import org.standwright.unit.Units;

/** Every preset is a test: what must hold for any furniture holds for each. */
class PresetStandsTest {
    static Stream<StandDesign> stands() {
        return Presets.stands();
    }

    static Stream<String> machines() {
        return Presets.machines();
    }

    @ParameterizedTest
    @MethodSource("stands")
    void closesToTheWorkingHeightAndKeepsEverythingApart(StandDesign design) {
        var stand = StandBuilder.build(design);

        assertThat(stand.stack().sum()).isCloseTo(design.workingHeight().height(), within(1e-6));
        Clearances.check(stand.assembly());
    }

    @ParameterizedTest
    @MethodSource("stands")
    void hasNoStops(StandDesign design) {
        assertThat(Product.checked(design).stops()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("stands")
    void givesTheSameBytesTwiceAndOnAnyNumberOfThreads(StandDesign design)
            throws ExecutionException, InterruptedException {
        var first = Bytes.of(design);
        for (int threads : new int[] {1, 4}) {
            var pool = new ForkJoinPool(threads);
            var again = pool.submit(() -> Bytes.of(design)).get();
            pool.shutdown();
            assertThat(again.keySet()).isEqualTo(first.keySet());
            first.forEach((name, bytes) -> assertThat(Arrays.equals(bytes, again.get(name)))
                    .as("%s on %d threads", name, threads)
                    .isTrue());
        }
    }

    @ParameterizedTest
    @MethodSource("machines")
    void startsEveryMachineWithADesignThatCanBeBuilt(String machine) {
        for (var units : Units.values()) {
            var text = StartingFile.forMachine(Presets.shipped(), machine, units);
            var product = Product.checked(Presets.stand(machine, text));

            assertThat(product.stops()).isEmpty();
            Clearances.check(product.furniture().assembly());
        }
    }

    /** A cabinet of 24 in with sides of 23/32 in: opening 22.5625 in, box 21.53125 in, as the slide's help page asks. */
    @Test
    void leavesInchSlidesOneInchAndAThirtySecond() {
        var inches = stands().filter(design -> design.unit() == Units.INCH)
                .findFirst()
                .orElseThrow();
        var narrow = Draft.of(inches, draft -> {
            draft.plan(24 * 25.4, inches.plan().depth().orElseThrow());
            draft.bays = List.of(Designs.bay(Designs.equal(3)));
        });
        var bay = StandBuilder.build(narrow).bays().get(0);

        assertThat(bay.opening().width() / 25.4).isCloseTo(22.5625, within(1e-9));
        assertThat(bay.drawers().get(0).box().width() / 25.4).isCloseTo(21.53125, within(1e-9));
    }
}
