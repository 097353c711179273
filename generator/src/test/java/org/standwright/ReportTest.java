package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.StandDesign;
import org.standwright.file.DesignFiles;

/** Every report says enough to work its stand out again, and comes to the same sizes. */
class ReportTest {
    private static final Offset<Double> ROUNDING = within(1e-6);
    private static final int RANDOM_STANDS = 20;

    static Stream<StandDesign> stands() {
        var random = LongStream.rangeClosed(1, RANDOM_STANDS)
                .mapToObj(RandomStandsTest::buildable)
                .map(text -> DesignFiles.parse("random.json", text, Presets.shipped())
                        .design());
        return Stream.concat(Presets.stands(), random);
    }

    @ParameterizedTest
    @MethodSource("stands")
    void comesToTheSameSizes(StandDesign design) {
        var report = Report.of(design);

        carcass(report);
        double left = report.thickness("carcass");
        for (int bay = 0; bay < report.list("/bays").size(); bay++) {
            left = opening(report, bay, left) + report.thickness("carcass");
            boxes(report, bay);
            fronts(report, bay);
            contents(report, bay);
        }
        assertThat(left).as("right face of the right side").isCloseTo(report.number("/design/plan/width"), ROUNDING);
    }

    private static void carcass(Report report) {
        double bottom = report.number("/carcass/min/2");
        double top = report.number("/carcass/max/2");
        assertThat(bottom).as("support").isCloseTo(report.support(), ROUNDING);
        assertThat(top - bottom).as("carcass").isCloseTo(report.carcassHeight(), ROUNDING);
    }

    /** Returns its right edge. */
    private static double opening(Report report, int bay, double left) {
        var given = report.list("/design/bays").get(bay).path("width");
        double width = given.isMissingNode() ? report.sharedOpening() : given.doubleValue();
        var opening = "/bays/" + bay + "/opening";
        double panel = report.thickness("carcass");
        assertThat(report.number(opening + "/x0")).isCloseTo(left, ROUNDING);
        assertThat(report.number(opening + "/x1")).isCloseTo(left + width, ROUNDING);
        assertThat(report.number(opening + "/z0")).isCloseTo(report.support() + panel, ROUNDING);
        assertThat(report.number(opening + "/z1"))
                .isCloseTo(report.support() + report.carcassHeight() - panel, ROUNDING);
        return left + width;
    }

    private static void boxes(Report report, int bay) {
        double width = report.number("/bays/" + bay + "/opening/x1") - report.number("/bays/" + bay + "/opening/x0");
        for (var drawer : report.list("/bays/" + bay + "/drawers")) {
            assertThat(drawer.at("/box/width").doubleValue())
                    .isCloseTo(width - 2 * report.number("/design/hang/slide/sideSpace"), ROUNDING);
            assertThat(drawer.at("/box/depth").doubleValue()).isCloseTo(report.longestSlide(), ROUNDING);
        }
    }

    /** Inset fronts fill their opening; overlay fronts the carcass's face, up to the middle of each partition. */
    private static void fronts(Report report, int bay) {
        double gap = report.number("/design/gap");
        double panel = report.isInset() ? 0 : report.thickness("carcass");
        double side = report.isInset() ? gap : gap / 2;
        int last = report.list("/bays").size() - 1;
        double x0 = report.number("/bays/" + bay + "/opening/x0") - (bay == 0 ? panel : panel / 2) + side;
        double x1 = report.number("/bays/" + bay + "/opening/x1") + (bay == last ? panel : panel / 2) - side;
        double from = report.number("/bays/" + bay + "/opening/z1") + panel;
        for (var drawer : report.list("/bays/" + bay + "/drawers")) {
            var front = drawer.get("front");
            assertThat(front.get("x0").doubleValue()).isCloseTo(x0, ROUNDING);
            assertThat(front.get("x1").doubleValue()).isCloseTo(x1, ROUNDING);
            assertThat(front.get("z1").doubleValue()).isCloseTo(from - gap, ROUNDING);
            from = front.get("z0").doubleValue();
        }
        assertThat(from - gap)
                .as("lowest front of bay " + (bay + 1))
                .isCloseTo(report.number("/bays/" + bay + "/opening/z0") - panel, ROUNDING);
    }

    /** Given fronts as given, equal ones equal, filled ones as high as asked but for the lowest, which takes the rest. */
    private static void contents(Report report, int bay) {
        var heights = report.list("/bays/" + bay + "/drawers").stream()
                .map(drawer -> drawer.at("/front/z1").doubleValue()
                        - drawer.at("/front/z0").doubleValue())
                .toList();
        int at = 0;
        for (var content : report.list("/design/bays/" + bay + "/contents")) {
            int count = count(content, heights.size() - at);
            holds(content, heights.subList(at, at + count), report.number("/design/gap"));
            at += count;
        }
        assertThat(at).isEqualTo(heights.size());
    }

    private static int count(JsonNode content, int left) {
        return switch (content.get("kind").asText()) {
            case "drawers" -> content.get("fronts").size();
            case "equal-drawers" -> content.get("count").intValue();
            default -> left; // random stands and presets have nothing below them
        };
    }

    private static void holds(JsonNode content, List<Double> heights, double gap) {
        switch (content.get("kind").asText()) {
            case "drawers" ->
                sameHeights(
                        heights,
                        StreamSupport.stream(content.get("fronts").spliterator(), false)
                                .map(JsonNode::doubleValue)
                                .toList());
            case "equal-drawers" -> assertThat(heights).allMatch(height -> Math.abs(height - heights.get(0)) < 1e-6);
            default -> {
                double front = content.get("front").doubleValue();
                int last = heights.size() - 1;
                assertThat(heights.subList(0, last)).allMatch(height -> Math.abs(height - front) < 1e-6);
                assertThat(heights.get(last)).isBetween(front - 1e-6, 2 * front + gap + 1e-6);
            }
        }
    }

    private static void sameHeights(List<Double> heights, List<Double> given) {
        for (int i = 0; i < given.size(); i++) {
            assertThat(heights.get(i)).isCloseTo(given.get(i), ROUNDING);
        }
    }
}
