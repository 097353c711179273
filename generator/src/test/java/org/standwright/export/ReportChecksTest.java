package org.standwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.standwright.check.Cure;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.Quantity;
import org.standwright.check.RuleText;
import org.standwright.check.rules.Checks;
import org.standwright.design.Designs;
import org.standwright.make.Product;

class ReportChecksTest {
    private static final RuleText TEXT = RuleText.plain("example-sag", "Does it sag?", "common practice, no source");

    @Test
    void aMeasuredFindingHasItsFigureLimitInputsAndCure() {
        var gauge = new Gauge(Quantity.LINE_LOAD, 2, Limit.atMost(1, 4));
        var node = ReportChecks.finding(Finding.judged(TEXT, "back", gauge, "It racks.")
                .with(new Input("F", "push", Quantity.FORCE, 150))
                .cured(Cure.whole(
                        "a thicker back",
                        Designs.planerStand(),
                        Optional.of(new Gauge(Quantity.LINE_LOAD, 0.5, gauge.limit()))))
                .waivedFor("Nobody ever pushes it."));

        assertThat(node)
                .hasToString(
                        "{\"severity\":\"caution\",\"rule\":\"example-sag\",\"subject\":\"back\","
                                + "\"message\":\"It racks.\",\"source\":\"common practice, no source\",\"quantity\":\"line-load\","
                                + "\"figure\":2.0,\"limit\":{\"side\":\"at-most\",\"caution\":1.0,\"stop\":4.0},\"ratio\":2.0,"
                                + "\"inputs\":[{\"symbol\":\"F\",\"what\":\"push\",\"quantity\":\"force\",\"value\":150.0}],"
                                + "\"cure\":{\"words\":\"a thicker back\",\"figure\":0.5},\"waived\":\"Nobody ever pushes it.\"}");
    }

    @Test
    void aRatioBeyondAllNumbersIsLeftOut() {
        var nothing = new Gauge(Quantity.RATIO, 0, Limit.atLeast(1));

        assertThat(ReportChecks.finding(Finding.judged(TEXT, "stand", nothing, "It falls."))
                        .has("ratio"))
                .isFalse();
    }

    /** 38 kg of machine; the boards' weights add up to the report's own mass of wood. */
    @Test
    void theReportNamesEveryRuleAndEverythingThatWeighs() throws IOException {
        var report = report();

        assertThat(report.get("rules"))
                .hasSize(Checks.STAND.size())
                .allSatisfy(rule -> assertThat(rule.fieldNames())
                        .toIterable()
                        .containsExactly("name", "question", "formula", "assumptions", "source"));
        assertThat(mass(report, "machine")).isEqualTo(38);
        assertThat(mass(report, "board")).isCloseTo(report.get("mass").asDouble(), within(1e-9));
        assertThat(report.get("weights"))
                .allSatisfy(weight -> assertThat(weight.get("centre")).hasSize(3));
    }

    private static JsonNode report() throws IOException {
        var out = new ByteArrayOutputStream();
        Product.checked(Designs.planerStand()).writeReport(out);
        return new JsonMapper().readTree(out.toByteArray());
    }

    private static double mass(JsonNode report, String kind) {
        return StreamSupport.stream(report.get("weights").spliterator(), false)
                .filter(weight -> weight.get("kind").asText().equals(kind))
                .mapToDouble(weight -> weight.get("mass").asDouble())
                .sum();
    }
}
