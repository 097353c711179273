package org.standwright.export;

import static org.standwright.export.TextTable.Align.LEFT;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.standwright.check.Cautions;
import org.standwright.check.Cautions.Caution;
import org.standwright.check.Finding;
import org.standwright.check.rules.Answer;
import org.standwright.check.rules.RulesOf;
import org.standwright.design.built.Furniture;
import org.standwright.packet.words.FindingWords;
import org.standwright.unit.Units;

/**
 * What all rules answer about a piece of furniture, as plain text: a table of those that measure, with a bar of the share of the limit
 * that is used; a table of those that found something without measuring; the names of the others; then the findings in
 * sentences; then what is said with everything.
 */
public final class CheckTextWriter {
    private final List<Answer> answers;
    private final List<Finding> findings;
    private final List<Caution> cautions;
    private final Units units;
    private final List<String> lines = new ArrayList<>();

    private CheckTextWriter(Furniture furniture, List<Finding> findings) {
        this.answers = Answer.of(findings, RulesOf.of(furniture));
        this.findings = findings;
        this.cautions = Cautions.of(furniture);
        this.units = furniture.design().unit();
    }

    /** Writes UTF-8. */
    public static void write(Furniture furniture, List<Finding> findings, OutputStream out) throws IOException {
        var page = new CheckTextWriter(furniture, findings);
        page.measured();
        page.unmeasured();
        page.silent();
        page.findings();
        page.cautions();
        out.write((String.join("\n", page.lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private void measured() {
        var table = new TextTable(LEFT, LEFT, LEFT, LEFT, LEFT, LEFT);
        answers.forEach(answer -> answer.measured()
                .ifPresent(worst -> worst.gauge()
                        .ifPresent(gauge -> table.add(
                                answer.rule().name(),
                                UsedBar.of(gauge),
                                FindingWords.weight(worst),
                                gauge.figureWords(units),
                                gauge.firstLimitWords(units),
                                worst.subject()))));
        section("Checks that measure: share of the limit used, at the worst place", table);
    }

    private void unmeasured() {
        var table = new TextTable(LEFT, LEFT, LEFT);
        answers.forEach(answer -> answer.unmeasured().stream()
                .findFirst()
                .ifPresent(first -> table.add(
                        answer.rule().name(),
                        FindingWords.weight(first),
                        answer.rule().question() + " " + subjects(answer))));
        section("Checks that look, and found something to say", table);
    }

    private static String subjects(Answer answer) {
        return answer.unmeasured().stream()
                .map(Finding::subject)
                .distinct()
                .collect(Collectors.joining(", ", "(", ")"));
    }

    private void section(String heading, TextTable table) {
        var rows = table.lines();
        if (!rows.isEmpty()) {
            heading(heading);
            lines.addAll(rows);
        }
    }

    private void silent() {
        var names = answers.stream()
                .filter(answer -> answer.findings().isEmpty())
                .map(answer -> answer.rule().name())
                .collect(Collectors.joining(", "));
        if (!names.isEmpty()) {
            lines.add("");
            lines.addAll(WrappedText.lines("", "    ", "Nothing to say here: " + names + "."));
        }
    }

    private void findings() {
        heading("Findings");
        var worth = findings.stream().filter(Finding::isWorthSaying).toList();
        if (worth.isEmpty()) {
            lines.add("none; the checks know only what was entered");
        }
        worth.forEach(finding -> lines.addAll(WrappedText.lines(
                FindingWords.weight(finding) + ": ",
                "    ",
                finding.subject() + ": " + finding.sentences(units) + " (" + finding.rule() + "; " + finding.source()
                        + ")")));
    }

    private void cautions() {
        heading("Whatever the findings");
        cautions.forEach(caution -> lines.addAll(WrappedText.lines("- ", "  ", caution.brief())));
    }

    private void heading(String text) {
        lines.add("");
        lines.add(text);
    }
}
