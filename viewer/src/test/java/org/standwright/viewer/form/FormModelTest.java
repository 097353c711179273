package org.standwright.viewer.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.file.FileKind;
import org.standwright.file.Preset;

class FormModelTest {
    private final Bench bench = Bench.of(FileKind.STAND, "table-saw-stand");

    static Stream<Preset> designs() {
        return Stream.of(FileKind.STAND, FileKind.CLEAT_WALL).flatMap(kind -> Bench.LIBRARY.list(kind).stream());
    }

    @ParameterizedTest
    @MethodSource("designs")
    void changesNothingWhereTheValueThatStandsThereIsTypedAgain(Preset preset) {
        var bench = new Bench(preset.text());

        Bench.rows(bench.model.fileProperty().get().orElseThrow())
                .filter(row -> row.isGiven() && !row.input().holdsRows())
                .forEach(row -> {
                    bench.model.type(row, row.written().orElseThrow());
                    bench.model.choose(row, row.json().orElseThrow());
                });

        assertThat(bench.steps).isEmpty();
    }

    @Test
    void keepsUnitsAndPlainNumbersAsTheyAreTyped() {
        bench.model.type(bench.row("/workingHeight/surfaceHeight"), "24 1/2 in");
        bench.model.type(bench.row("/workingHeight/below"), "0.25");

        assertThat(bench.text()).contains("\"surfaceHeight\": \"24 1/2 in\"").contains("\"below\": 0.25");
        assertThat(bench.steps).containsExactly("Change surface height", "Change below");
    }

    @Test
    void takesAFieldAwayWhenNothingIsTyped() {
        bench.model.type(bench.row("/workingHeight/fall"), " ");

        assertThat(bench.row("/workingHeight/fall").isGiven()).isFalse();
        assertThat(bench.steps).containsExactly("Clear fall");
    }

    @Test
    void namesTheEntryThatAStepIsAbout() {
        bench.model.type(bench.row("/bays/0/width"), "26 in");

        assertThat(bench.steps).containsExactly("Change width of bay 1");
    }

    @Test
    void addsCopiesMovesAndRemovesEntries() {
        var before = bench.row("/bays/1").json();

        bench.model.move(bench.row("/bays/1"), -1);
        bench.model.duplicate(bench.row("/bays/0"));
        bench.model.addEntry(bench.row("/bays"), Optional.empty());
        bench.model.clear(bench.row("/bays/3"));
        bench.model.move(bench.row("/bays/0"), -1);

        assertThat(bench.row("/bays").rows()).hasSize(3);
        assertThat(bench.row("/bays/0").json()).isEqualTo(before);
        assertThat(bench.row("/bays/1").json()).isEqualTo(before);
        assertThat(bench.steps).containsExactly("Move bay 2 up", "Duplicate bay 1", "Add bay", "Remove bay 4");
    }

    @Test
    void beginsAListThatIsLeftOut() {
        var stock = bench.row("/stock/sheets");

        bench.model.addEntry(stock, Optional.empty());

        assertThat(bench.row("/stock/sheets/0/sheet").isGiven()).isTrue();
        assertThat(bench.model.isFine(bench.row("/stock"))).isTrue();
    }

    @Test
    void addsAGroupThatIsLeftOutWithAllThatItMustHave() {
        bench.model.add(bench.row("/site/doorway"));

        assertThat(bench.model.isFine(bench.row("/site"))).isTrue();
        assertThat(bench.steps).containsExactly("Add doorway");
    }

    @Test
    void changesAKindInOneStepToSomethingThatIsReadAtOnce() {
        for (var kind : bench.row("/support/kind").choices()) {
            bench.model.choose(bench.row("/support/kind"), kind.json());

            assertThat(bench.model.isFine(bench.row("/support")))
                    .as(kind.label())
                    .isTrue();
        }
        assertThat(bench.steps).hasSize(3).containsOnly("Change kind");
    }

    @Test
    void addsEveryKindOfHolderSoThatItIsReadAtOnce() {
        var wall = Bench.of(FileKind.CLEAT_WALL, "door-wall");
        for (var kind : wall.row("/holders").members()) {
            wall.model.addEntry(wall.row("/holders"), Optional.of(kind));

            int last = wall.row("/holders").rows().size() - 1;
            assertThat(wall.model.isFine(wall.row("/holders/" + last)))
                    .as(kind.label() + " " + wall.model.problems(wall.row("/holders/" + last)))
                    .isTrue();
        }
    }

    @Test
    void tellsEachProblemAtItsRowAndCountsThemAroundIt() {
        bench.model.type(bench.row("/bays/1/contents/0/count"), "99");

        assertThat(bench.model.problems(bench.row("/bays/1/contents/0/count")))
                .containsExactly("Must be 1 to 20. The nearest is 20.");
        assertThat(bench.model.problems(bench.row("/bays/1"))).isEmpty();
        assertThat(bench.model.problemsInside(bench.row("/bays"))).isEqualTo(1);
    }

    @Test
    void tellsAProblemOfABareValueAtTheFieldThatItIs() {
        bench.show("{ \"version\": 1, \"kind\": \"stand\", \"saw\": { \"trim\": \"x\" } }");

        assertThat(bench.model.problems(bench.row("/saw/trim/all"))).hasSize(1);
        assertThat(bench.model.problems(bench.row("/saw/trim"))).isEmpty();
    }

    @Test
    void leavesTheRowsAloneWhileTheTextCannotBeRead() {
        bench.show("{ \"version\": 1, ");

        assertThat(bench.model.unreadableProperty().get()).contains("line 1");
        assertThat(bench.row("/bays").rows()).hasSize(2);
        bench.show("{ \"version\": 1, \"kind\": \"stand\" }");
        assertThat(bench.model.unreadableProperty().get()).isEmpty();
        assertThat(bench.row("/bays").rows()).isEmpty();
    }
}
