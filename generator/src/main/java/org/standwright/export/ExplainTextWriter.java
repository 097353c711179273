package org.standwright.export;

import static org.standwright.export.TextTable.Align.LEFT;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.RuleText;
import org.standwright.packet.words.FindingWords;
import org.standwright.unit.Units;

/** How one rule comes to what it says about a piece of furniture, as plain text: its formula, and the numbers of each finding. */
public final class ExplainTextWriter {
    private static final String INDENT = "  ";
    /** Room for the word before what a line says. */
    private static final int WORD = 11;

    private final Units units;
    private final List<String> lines = new ArrayList<>();

    private ExplainTextWriter(Units units) {
        this.units = units;
    }

    /**
     * Writes UTF-8.
     *
     * @param findings of any rules; those of this one are explained
     */
    public static void write(RuleText rule, List<Finding> findings, Units units, OutputStream out) throws IOException {
        var page = new ExplainTextWriter(units);
        page.rule(rule);
        var ours = findings.stream()
                .filter(finding -> finding.rule().equals(rule.name()))
                .toList();
        if (ours.isEmpty()) {
            page.lines.add("");
            page.lines.add("It has nothing to say here.");
        }
        ours.forEach(page::finding);
        out.write((String.join("\n", page.lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private void rule(RuleText rule) {
        lines.add(rule.name() + ": " + rule.question());
        lines.add("");
        line("formula", rule.formula().isEmpty() ? "nothing is worked out" : rule.formula());
        line("taken", rule.assumptions().isEmpty() ? "nothing for granted" : rule.assumptions());
        line("source", rule.source());
    }

    private void finding(Finding finding) {
        lines.add("");
        lines.add(finding.subject() + ": " + FindingWords.weight(finding));
        inputs(finding.inputs());
        finding.gauge().ifPresent(this::gauge);
        line("says", finding.message());
        finding.cure().ifPresent(cure -> line(cure.title().toLowerCase(Locale.ROOT), cure.outcome(units)));
        finding.waived().ifPresent(reason -> line("accepted", reason));
    }

    private void inputs(List<Input> inputs) {
        var table = new TextTable(LEFT, LEFT, LEFT);
        inputs.forEach(input -> table.add(word(input.symbol()), "= " + input.words(units), input.what()));
        lines.addAll(table.lines());
    }

    private void gauge(Gauge gauge) {
        line("figure", gauge.figureWords(units));
        line("limit", gauge.limitWords(units));
        line("used", UsedBar.of(gauge));
    }

    private void line(String word, String text) {
        lines.addAll(WrappedText.lines(word(word) + "  ", " ".repeat(WORD + 2), text));
    }

    /** Filled up with blanks, so that what follows it lines up. */
    private static String word(String word) {
        return INDENT + word + " ".repeat(Math.max(0, WORD - INDENT.length() - word.length()));
    }
}
