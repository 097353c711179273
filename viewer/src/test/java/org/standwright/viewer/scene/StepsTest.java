package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.assembly.PlacedPart;

class StepsTest {
    static List<Assembly> presets() {
        return Presets.all();
    }

    @ParameterizedTest
    @MethodSource("presets")
    void endsWithEverything(Assembly preset) {
        var steps = Steps.of(preset);

        assertThat(steps.get(steps.size() - 1).seen())
                .isEqualTo(Stream.concat(
                                preset.parts().stream().map(PlacedPart::label),
                                preset.blocks().stream().map(Block::label))
                        .collect(Collectors.toSet()));
    }

    @ParameterizedTest
    @MethodSource("presets")
    void addsSomethingWithEveryStepAndTakesNothingAway(Assembly preset) {
        Set<String> before = Set.of();
        for (var step : Steps.of(preset)) {
            assertThat(step.seen()).containsAll(before).hasSizeGreaterThan(before.size());
            before = step.seen();
        }
    }

    @ParameterizedTest
    @MethodSource("presets")
    void givesEveryStepAnotherName(Assembly preset) {
        assertThat(Steps.of(preset)).extracting(Step::name).doesNotHaveDuplicates();
    }

    @Test
    void putsAStandTogetherFromTheCarcassToTheFronts() {
        assertThat(Steps.of(Presets.stand("planer-stand")))
                .extracting(Step::name)
                .containsExactly(
                        "Carcass", "Slides", "Sub-top", "Back", "Support", "Worktop", "Machine", "Drawers", "Fronts");
    }

    @Test
    void hasNoBackInTheCarcassButAllDrawersBeforeTheirFronts() {
        var steps = Steps.of(Presets.stand("bandsaw-stand"));

        assertThat(steps.get(0).seen()).containsExactlyInAnyOrder("left side", "right side", "bottom");
        assertThat(added(steps, "Fronts"))
                .containsExactlyInAnyOrder(
                        "drawer 1.1 front", "drawer 1.2 front", "drawer 1.3 front", "drawer 1.4 front");
    }

    @Test
    void hangsAWallRowByRowAndThenItsHolders() {
        assertThat(Steps.of(Presets.wall("corner-walls")))
                .extracting(Step::name)
                .startsWith("west row 1", "west row 2", "west row 3")
                .containsSubsequence("west row 6", "north row 1", "north row 6", "sander shelf", "short clamps");
    }

    @Test
    void putsAllStripsOfARowUpInOneStep() {
        assertThat(added(Steps.of(Presets.wall("corner-walls")), "west row 2"))
                .containsExactlyInAnyOrder("west row 2 strip 1", "west row 2 strip 2");
    }

    private static Set<String> added(List<Step> steps, String name) {
        int at = steps.stream().map(Step::name).toList().indexOf(name);
        var added = new HashSet<>(steps.get(at).seen());
        added.removeAll(steps.get(at - 1).seen());
        return added;
    }
}
