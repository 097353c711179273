package org.standwright.packet;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.standwright.check.Finding;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.unit.Units;

/** What the checks have to say, the heaviest first. */
final class FindingSection implements Section {
    @Override
    public void print(Contents contents, Flow flow) {
        flow.heading("Findings");
        if (contents.findings().stream().noneMatch(Finding::isWorthSaying)) {
            flow.paragraph("The checks found nothing to say. That is no proof that the stand is safe: they know only "
                    + "what was entered.");
            return;
        }
        var rows = contents.findings().stream()
                .filter(Finding::isWorthSaying)
                .sorted(Comparator.comparing(Finding::severity))
                .map(finding -> row(finding, contents.units()))
                .toList();
        flow.table(new Table(
                List.of(
                        Column.words("Weight"),
                        Column.prose("About"),
                        Column.prose("Finding"),
                        Column.prose("Limit from")),
                rows));
    }

    private static List<String> row(Finding finding, Units units) {
        return List.of(
                finding.severity().name().toLowerCase(Locale.ROOT),
                finding.subject(),
                finding.sentences(units),
                finding.source());
    }
}
