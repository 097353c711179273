package org.standwright.packet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.rules.Answer;
import org.standwright.check.rules.RulesOf;
import org.standwright.design.built.Furniture;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.FindingWords;
import org.standwright.unit.Units;

/** What the checks say, the heaviest first; how much of each limit is used; and how the figures were found. */
final class CheckSection implements Section<Furniture> {
    /** Letters that fit on a line beside the names of the checks. */
    private static final int ONE_LINE = 100;

    @Override
    public void print(Contents<? extends Furniture> contents, Flow flow) {
        flow.heading("Findings");
        findings(contents, flow);
        var measured = Answer.of(contents.findings(), RulesOf.of(contents.furniture())).stream()
                .flatMap(answer -> answer.measured().stream())
                .toList();
        if (!measured.isEmpty()) {
            flow.heading("Checks");
            flow.lead("How much of its limit each check uses at its worst place. The line across a bar is the limit.");
            flow.table(shares(measured, contents.units()));
            flow.heading("How the figures were found");
            flow.table(figures(measured, contents.units()));
        }
    }

    private static void findings(Contents<?> contents, Flow flow) {
        var rows = contents.findings().stream()
                .filter(Finding::isWorthSaying)
                .sorted(Comparator.comparing(Finding::severity))
                .map(finding -> row(finding, contents.units()))
                .toList();
        if (rows.isEmpty()) {
            flow.paragraph("The checks found nothing to say. That is no proof that it is safe: they know only "
                    + "what was entered.");
        } else {
            flow.table(
                    new Table(List.of(Column.words("Severity"), Column.prose("About"), Column.prose("Finding")), rows));
        }
    }

    private static List<String> row(Finding finding, Units units) {
        return List.of(
                FindingWords.weight(finding),
                finding.subject() + "\n" + finding.rule(),
                String.join("\n", FindingWords.lines(finding, units)));
    }

    private static Table shares(List<Finding> measured, Units units) {
        return new Table(
                List.of(
                        Column.prose("Question"),
                        Column.prose("Worst at"),
                        Column.figures("Figure"),
                        Column.words("Limit"),
                        Column.bar("Used"),
                        Column.figures("Share")),
                measured.stream()
                        .flatMap(finding -> finding.gauge().stream().map(gauge -> share(finding, gauge, units)))
                        .toList());
    }

    private static List<String> share(Finding finding, Gauge gauge, Units units) {
        return List.of(
                finding.text().question() + " (" + finding.rule() + ")",
                finding.subject(),
                gauge.figureWords(units),
                gauge.firstLimitWords(units),
                Column.share(gauge.used()),
                gauge.usedWords());
    }

    /** A formula that several checks share is printed once. */
    private static Table figures(List<Finding> measured, Units units) {
        var first = new HashMap<String, String>();
        var rows = new ArrayList<List<String>>();
        for (var finding : measured) {
            var formula = finding.text().formula();
            var known = first.putIfAbsent(formula, finding.rule());
            var shown = known == null || formula.isEmpty() ? formula : "as " + known;
            rows.add(List.of(finding.rule(), figure(finding, shown, units)));
        }
        return new Table(
                List.of(Column.words("Check"), Column.prose("Formula, and the numbers put into it at the worst place")),
                rows);
    }

    /** 'each = m / 3', 'm = 135 kg, mass of everything, full; gives 45 kg'. */
    private static String figure(Finding finding, String formula, Units units) {
        var numbers = Stream.concat(
                        finding.inputs().stream().map(input -> words(input, units)),
                        finding.gauge().stream().map(gauge -> unbroken("gives " + gauge.figureWords(units))))
                .collect(Collectors.joining("; "));
        boolean fits = formula.length() + numbers.length() < ONE_LINE;
        return formula.isEmpty() ? numbers : formula + (fits ? ": " : "\n") + numbers;
    }

    private static String words(Input input, Units units) {
        return unbroken(input.symbol() + " = " + input.words(units)) + ", " + input.what();
    }

    /** A value that no line break parts from its unit. */
    private static String unbroken(String words) {
        return words.replace(' ', '\u00a0');
    }
}
