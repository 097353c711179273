package org.standwright.check.making;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.RandomStands;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.Severity;
import org.standwright.check.fastener.EdgeDistance;
import org.standwright.check.fastener.EdgeScrews;
import org.standwright.check.fastener.HingePull;
import org.standwright.check.fastener.RunnerScrews;
import org.standwright.check.fastener.SlideLoad;
import org.standwright.check.fastener.SlideScrews;
import org.standwright.check.fastener.WorktopScrews;
import org.standwright.design.stand.StandBuilder;

/** The builder and the rules agree: nothing that it built is judged to be impossible to make. Nothing weighs here. */
class RandomStandsJudgedTest {
    private static final List<Rule<LoadedStand>> RULES = List.of(
            new ThinWeb(),
            new MeetingScrews(),
            new ScrewsThrough(),
            new EdgePly(),
            new HingeSlide(),
            new HardwareThickness(),
            new SlideRoom(),
            new SmallParts(),
            new LargeParts(),
            new EdgeScrews(),
            new EdgeDistance(),
            new SlideLoad(),
            new SlideScrews(),
            new RunnerScrews(),
            new HingePull(),
            new WorktopScrews());

    static LongStream seeds() {
        return LongStream.rangeClosed(1, "full".equals(System.getProperty("standwright.random")) ? 1000 : 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void buildsNothingThatCannotBeMade(long seed) {
        var stand = new LoadedStand(StandBuilder.build(RandomStands.buildable(seed)), List.of());
        for (var rule : RULES) {
            assertThat(rule.check(stand))
                    .noneMatch(finding -> finding.severity() == Severity.STOP)
                    .allSatisfy(finding -> finding.gauge()
                            .ifPresent(
                                    gauge -> assertThat(gauge.used()).isFinite().isNotNegative()));
        }
    }
}
