package org.standwright.packet;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.standwright.check.Finding;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;

/** What the checks have to say, the heaviest first. */
final class FindingSection implements Section {
    @Override
    public void print(Contents contents, Flow flow) {
        flow.heading("Findings");
        if (contents.findings().isEmpty()) {
            flow.paragraph("The checks found nothing to say. That is no proof that the stand is safe: they know only "
                    + "what was entered.");
            return;
        }
        var rows = contents.findings().stream()
                .sorted(Comparator.comparing(Finding::severity))
                .map(FindingSection::row)
                .toList();
        flow.table(new Table(
                List.of(
                        Column.words("Weight"),
                        Column.prose("About"),
                        Column.prose("Finding"),
                        Column.prose("Limit from")),
                rows));
    }

    private static List<String> row(Finding finding) {
        return List.of(
                finding.severity().name().toLowerCase(Locale.ROOT),
                finding.subject(),
                finding.message(),
                finding.source());
    }
}
