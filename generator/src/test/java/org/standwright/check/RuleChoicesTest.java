package org.standwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.check.rules.Checks;
import org.standwright.design.RuleChoice;

class RuleChoicesTest {
    private static final String REASON = "It is watched whenever it runs.";

    @Test
    void tellsThatAnAcceptedReasonIsNoLongerNeeded() {
        assertThat(notes(new RuleChoice("foot-load", Optional.empty(), 1, Optional.of(REASON))))
                .containsExactly(
                        "foot-load: The accepted reason for it is no longer needed: the rule finds nothing wrong.");
    }

    @Test
    void tellsThatNothingIsCalledSo() {
        assertThat(notes(new RuleChoice("foot-load", Optional.of("caster 75"), 0.5, Optional.empty())))
                .containsExactly(
                        "foot-load, caster 75: Nothing that this rule looks at is called 'caster 75', so this choice"
                                + " changes nothing. It looks at 'leveler M10'.");
    }

    @Test
    void tellsThatARuleMeasuresNothing() {
        assertThat(notes(new RuleChoice("edge-screws", Optional.empty(), 0.5, Optional.empty())))
                .singleElement()
                .asString()
                .startsWith("edge-screws: The rule measures nothing here");
    }

    @Test
    void tellsThatAChoiceSaysNothing() {
        assertThat(notes(new RuleChoice("foot-load", Optional.empty(), 1, Optional.empty())))
                .hasSize(1);
    }

    @Test
    void isSilentAboutChoicesThatCount() {
        assertThat(notes(
                        new RuleChoice("foot-load", Optional.empty(), 0.5, Optional.empty()),
                        new RuleChoice("sheet-lifting", Optional.of("board 18"), 1, Optional.of(REASON))))
                .isEmpty();
    }

    /** What a design file may name is what 'check' prints, in the same order. */
    @Test
    void theSchemaNamesEveryRule() throws IOException {
        var names = Checks.texts().stream().map(RuleText::name).toList();

        assertThat(schemaNames())
                .as("\"enum\": [\"%s\"]", String.join("\", \"", names))
                .isEqualTo(names);
    }

    @Test
    void everyRuleSaysWhatItAsksAndWhereItsLimitComesFrom() {
        assertThat(Checks.STAND).extracting(rule -> rule.text().name()).doesNotHaveDuplicates();
        assertThat(Checks.texts()).allSatisfy(rule -> {
            assertThat(rule.name()).matches("[a-z]+(-[a-z]+)*");
            assertThat(rule.question()).endsWith("?");
            assertThat(rule.source()).isNotBlank();
        });
    }

    private static List<String> schemaNames() throws IOException {
        try (var schema = Checks.class.getResourceAsStream("/org/standwright/file/standwright.schema.json")) {
            var names = new ArrayList<String>();
            new ObjectMapper()
                    .readTree(schema)
                    .at("/$defs/rule-name/enum")
                    .elements()
                    .forEachRemaining((JsonNode name) -> names.add(name.asText()));
            return names;
        }
    }

    private static List<String> notes(RuleChoice... choices) {
        return Stands.all(Stands.plain(draft -> draft.rules = List.of(choices))).stream()
                .filter(finding -> finding.rule().equals("rule-choice"))
                .map(finding -> finding.subject() + ": " + finding.message())
                .toList();
    }
}
