package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

/**
 * The shelves in one opening: fixed ones with the same space between all of them, adjustable ones on pins of 5 mm in rows
 * of holes 32 mm apart (guides to the 32 mm system), the lowest hole 96 mm above the level below.
 */
final class ReportedShelves {
    private static final double PITCH = 32;
    private static final double FIRST = 96;
    private static final double HALF_PIN = 2.5;
    private static final double HAND = 40;

    private final Report report;
    private final Entry written;

    ReportedShelves(Report report, Entry written) {
        this.report = report;
        this.written = written;
    }

    void check(Entry section, Area opening, List<Entry> doors) {
        var shelves = section.numbers("/shelves");
        assertThat(shelves).hasSize((int) written.number("/shelves/count", 0));
        if (shelves.isEmpty()) {
            return;
        }
        var kind = written.text("/shelves/kind");
        assertThat(section.text("/shelfKind")).isEqualTo(kind);
        double space = (opening.height() - shelves.size() * report.panel()) / (shelves.size() + 1);
        for (int i = 0; i < shelves.size(); i++) {
            double even = space + i * (space + report.panel());
            if (kind.equals("fixed")) {
                assertThat(shelves.get(i)).as("fixed shelf").isCloseTo(even, within(1e-6));
            } else {
                onPins(shelves, i, opening);
                if (doors.isEmpty() && i == 0) {
                    nearest(shelves.get(i), even, opening);
                }
            }
        }
    }

    private void onPins(List<Double> shelves, int i, Area opening) {
        double hole = shelves.get(i) - HALF_PIN - FIRST;
        double step = Math.rint(hole / PITCH);
        assertThat(hole).as("hole of an adjustable shelf").isCloseTo(step * PITCH, within(1e-6));
        assertThat(FIRST + hole).isBetween(FIRST - 1e-6, opening.height() - FIRST + 1e-6);
        double from = i == 0 ? 0 : shelves.get(i - 1) + report.panel() + HAND;
        assertThat(shelves.get(i)).as("above the shelf below").isGreaterThanOrEqualTo(from - 1e-6);
    }

    /** Of all holes none is nearer to even spaces. */
    private static void nearest(double shelf, double even, Area opening) {
        double last = FIRST + PITCH * Math.floor((opening.height() - 2 * FIRST) / PITCH + 1e-9);
        double wanted = Math.max(FIRST + HALF_PIN, Math.min(last + HALF_PIN, even));
        assertThat(shelf).as("lowest shelf").isCloseTo(wanted, within(PITCH / 2 + 1e-6));
    }
}
