package org.standwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.check.Cure;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.Quantity;
import org.standwright.check.RuleText;
import org.standwright.design.Designs;
import org.standwright.design.stand.StandBuilder;
import org.standwright.unit.Units;

/** The top of the example carries 320 N over 400 mm: its sag and limits are given, not worked out. */
class CheckTextWritersTest {
    private static final RuleText SAG = new RuleText(
            "example-sag", "Does the example sag?", "sag = k W", "It is dry.", "common practice, no source");
    private static final RuleText LOOK = RuleText.plain("example-look", "Is it blue?", "common practice, no source");

    private static final Finding FINE = sag("left", 0.2);
    private static final Finding WORST =
            sag("right", 0.61).cured(Cure.whole("a second layer", Designs.planerStand(), Optional.of(gauge(0.1))));
    private static final Finding LOOKED =
            Finding.stop(LOOK, "front", "It is red.").waivedFor("Red is what its maker likes best.");

    @Test
    void drawsHowMuchOfALimitIsUsedAtTheWorstPlace() throws IOException {
        assertThat(check(FINE, WORST, LOOKED).lines())
                .contains("example-sag  [####################] 1.22  caution  0.61 mm  at most 0.5 mm  right")
                .contains("example-look  accepted stop  Is it blue? (front)");
        assertThat(check(FINE).lines())
                .contains("example-sag  [########............] 0.40  fine  0.2 mm  at most 0.5 mm  left");
    }

    @Test
    void listsTheRulesThatHaveNothingToSay() throws IOException {
        assertThat(check(FINE)).contains("Nothing to say here: foot-load, ");
    }

    @Test
    void saysLimitCureAndWhyAFindingIsAccepted() throws IOException {
        assertThat(check(LOOKED, WORST, FINE).replaceAll("\\s+", " "))
                .contains("caution: right: It sags. Limit: at most 0.5 mm, a stop above 1.5 mm."
                        + " Cure: a second layer, then 0.1 mm.")
                .contains("accepted stop: front: It is red. Accepted: Red is what its maker likes best.")
                .doesNotContain("left: It sags");
    }

    @Test
    void alwaysPrintsTheCautions() throws IOException {
        assertThat(check(FINE)).contains("Measure your own machine", "local codes", "arithmetic for planning");
        assertThat(check(FINE)).contains("none; the checks know only what was entered");
    }

    /** 0.997 of a limit is within it and 1.001 beyond, though both round to 1.00. */
    @Test
    void neverRoundsAcrossALimit() {
        assertThat(gauge(0.4985).usedWords()).isEqualTo("1.00");
        assertThat(gauge(0.5005).usedWords()).isEqualTo("1.01");
        assertThat(gauge(5e9).usedWords()).isEqualTo("over 99");
        assertThat(UsedBar.of(new Gauge(Quantity.RATIO, -1, Limit.atLeast(1))))
                .isEqualTo("[####################] over 99");
    }

    @Test
    void explainsOneRuleWithItsNumbers() throws IOException {
        var out = new ByteArrayOutputStream();
        ExplainTextWriter.write(SAG, List.of(LOOKED, WORST), Units.INCH, out);

        assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo("""
                example-sag: Does the example sag?

                  formula    sag = k W
                  taken      It is dry.
                  source     common practice, no source

                right: caution
                  W          = 71.9 lbf   all that is on it
                  L          = 15 3/4 in  clear span
                  figure     0.024 in
                  limit      at most 0.02 in, a stop above 0.059 in
                  used       [####################] 1.22
                  says       It sags.
                  cure       a second layer, then 0.004 in.
                """);
    }

    @Test
    void saysThatARuleHasNothingToSay() throws IOException {
        var out = new ByteArrayOutputStream();
        ExplainTextWriter.write(LOOK, List.of(WORST), Units.MM, out);

        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("nothing is worked out", "It has nothing to say here.");
    }

    private static Finding sag(String subject, double sag) {
        return Finding.judged(SAG, subject, gauge(sag), "It sags.")
                .with(
                        new Input("W", "all that is on it", Quantity.FORCE, 320),
                        new Input("L", "clear span", Quantity.LENGTH, 400));
    }

    private static Gauge gauge(double sag) {
        return new Gauge(Quantity.SAG, sag, Limit.atMost(0.5, 1.5));
    }

    private static String check(Finding... findings) throws IOException {
        var out = new ByteArrayOutputStream();
        CheckTextWriter.write(StandBuilder.build(Designs.planerStand()), List.of(findings), out);
        return out.toString(StandardCharsets.UTF_8);
    }
}
