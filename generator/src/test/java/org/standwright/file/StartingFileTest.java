package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.Content.EqualDrawers;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.PlanSize;
import org.standwright.file.text.DesignFileException;
import org.standwright.unit.Units;

class StartingFileTest {
    private static final PresetLibrary LIBRARY = SampleDesign.builtIn();

    @TempDir
    Path home;

    static Stream<Arguments> machines() {
        return LIBRARY.list(FileKind.MACHINE).stream()
                .flatMap(preset -> Arrays.stream(Units.values()).map(unit -> Arguments.of(preset.name(), unit)));
    }

    @ParameterizedTest
    @MethodSource("machines")
    void readsBackAndHoldsItsMachine(String machine, Units unit) {
        var text = StartingFile.forMachine(LIBRARY, machine, unit);

        var stand = stand(text);

        assertThat(stand.unit()).isEqualTo(unit);
        assertThat(PlanSize.of(stand).width())
                .isGreaterThan(stand.machine().base().width());
        assertThat(PlanSize.of(stand).depth())
                .isGreaterThan(stand.machine().base().depth());
        assertThat(text).doesNotContain("null", "E+", "\r");
    }

    @ParameterizedTest
    @MethodSource("machines")
    void saysSizesThatATapeShows(String machine, Units unit) {
        var stand = stand(StartingFile.forMachine(LIBRARY, machine, unit));
        double step = unit == Units.MM ? 10 : 12.7;

        assertThat(stand.workingHeight().height() / step % 1).isCloseTo(0, within(1e-9));
        assertThat(PlanSize.of(stand).width() / step % 1).isCloseTo(0, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("machines")
    void putsTheMachineInTheMiddleAsNearAsATapeShows(String machine, Units unit) {
        var stand = stand(StartingFile.forMachine(LIBRARY, machine, unit));
        double front = stand.place().margins().front().orElseThrow();
        double back = PlanSize.of(stand).depth() - stand.machine().base().depth() - front;

        assertThat(front).isGreaterThanOrEqualTo(38);
        assertThat(back - front).isBetween(-1e-9, 2 * 12.7);
    }

    @Test
    void showsWhatAMakerMayChoose() {
        assertThat(StartingFile.forMachine(LIBRARY, "drill-press", Units.INCH)).contains("""
                  "place": { "turn": 0, "margins": { "front": "2 in" } },
                  "workingHeight": "40 in",
                  "plan": { "width": "20 in", "depth": "20 in" },
                  "layout": "as-written",
                """, """
                "joint": { "kind": "dado" }""", """
                    "hang": { "kind": "slides", "slide": "slide-1-3-4-full-inch" },
                    "mount": "overlay",
                    "grip": { "kind": "pull", "pull": "pull-3-inch" }
                """, """
                  "edges": { "fronts": "tape-0.024-inch" },
                """);
    }

    @ParameterizedTest
    @MethodSource("machines")
    void leavesRoomForDrawersOfAtLeast75MillimetresInOpeningsOfAtLeast150(String machine, Units unit) {
        var stand = stand(StartingFile.forMachine(LIBRARY, machine, unit));
        int bays = stand.bays().size();
        double board = stand.carcass().sheet().material().thickness();
        // levelers, two layers of blocks, two of worktop, bottom and sub-top
        double opening =
                stand.workingHeight().height() - stand.machine().reference().height() - 40 - 6 * board;

        assertThat((PlanSize.of(stand).width() - (bays + 1) * board) / bays).isGreaterThan(150);
        for (var bay : stand.bays()) {
            int drawers = ((EqualDrawers) bay.contents().get(0)).count();
            assertThat(opening / drawers).isBetween(75.0, 250.0);
        }
    }

    /** Usual heights of work surfaces: workshop handbooks agree on these ranges; common practice, no standard. */
    @ParameterizedTest
    @CsvSource({
        "thickness-planer, 864, 914",
        "jobsite-table-saw, 864, 914",
        "drill-press, 914, 1118",
        "bandsaw, 914, 1118",
        "bench-grinder, 1016, 1118"
    })
    void standsAtTheUsualHeight(String machine, double least, double most) {
        for (var unit : Units.values()) {
            var text = StartingFile.forMachine(LIBRARY, machine, unit);
            assertThat(stand(text).workingHeight().height()).isBetween(least, most);
        }
    }

    @ParameterizedTest
    @CsvSource({"table, 3000, 2000, 2000", "spindle, 50, 100, 1", "worktop, 400, 0, 60"})
    void readsBackForTheLargestAndTheSmallestMachine(String kind, int size, int height, int mass) throws IOException {
        Files.writeString(home.resolve("odd.json"), """
                {
                  "version": 1, "kind": "machine", "name": "Odd one",
                  "base": { "width": %1$d, "depth": %1$d }, "mass": %4$d,
                  "envelope": { "width": %1$d, "depth": %1$d, "height": 2500 },
                  "reference": { "kind": "%2$s", "height": %3$d }
                }
                """.formatted(size, kind, height, mass));
        var library = PresetLibrary.of(home, Optional.empty());

        for (var unit : Units.values()) {
            var text = StartingFile.forMachine(library, "odd", unit);
            assertThat(DesignFiles.parse("new.json", text, library).design().unit())
                    .isEqualTo(unit);
        }
    }

    @Test
    void refusesAMachineThatIsNoPreset() {
        assertThatThrownBy(() -> StartingFile.forMachine(LIBRARY, "drill-pres", Units.MM))
                .isInstanceOf(DesignFileException.class)
                .hasMessage("preset \"drill-pres\" is no machine preset. Did you mean \"drill-press\"?");
    }

    private static StandDesign stand(String text) {
        return (StandDesign) DesignFiles.parse("new.json", text, LIBRARY).design();
    }
}
