package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.Area.same;

import java.util.Locale;

/** Every part's box from its placement, and its cut and rough sizes from its finished ones. */
final class ReportedParts {
    private final Report report;

    ReportedParts(Report report) {
        this.report = report;
    }

    void check() {
        report.list("/parts").forEach(part -> {
            box(part);
            within(part);
            sizes(part, "length", "x");
            sizes(part, "width", "y");
        });
    }

    private static void box(Entry part) {
        var along = part.numbers("/placement/along");
        var across = part.numbers("/placement/across");
        for (int axis = 0; axis < 3; axis++) {
            int next = (axis + 1) % 3;
            int last = (axis + 2) % 3;
            double through = along.get(next) * across.get(last) - along.get(last) * across.get(next);
            double from = part.number("/placement/origin/" + axis);
            double to = from
                    + along.get(axis) * part.number("/length")
                    + across.get(axis) * part.number("/width")
                    + through * part.number("/thickness");
            same(part.number("/box/min/" + axis), Math.min(from, to), part.text("/label"));
            same(part.number("/box/max/" + axis), Math.max(from, to), part.text("/label"));
        }
    }

    private void within(Entry part) {
        for (int axis = 0; axis < 3; axis++) {
            assertThat(part.number("/box/min/" + axis))
                    .as(part.text("/label"))
                    .isGreaterThanOrEqualTo(report.number("/built/box/min/" + axis) - 1e-6);
            assertThat(part.number("/box/max/" + axis))
                    .as(part.text("/label"))
                    .isLessThanOrEqualTo(report.number("/built/box/max/" + axis) + 1e-6);
        }
    }

    /** Cut = finished - bands, rough = cut + what is trimmed off at both ends. */
    private static void sizes(Entry part, String size, String edge) {
        var words = size.substring(0, 1).toUpperCase(Locale.ROOT) + size.substring(1);
        double cut = part.number("/" + size)
                - part.number("/bands/" + edge + "0/thickness", 0)
                - part.number("/bands/" + edge + "1/thickness", 0);
        same(part.number("/cut" + words), cut, "cut " + size + " of " + part.text("/label"));
        same(part.number("/rough" + words), cut + 2 * part.number("/oversize"), "rough " + size);
    }
}
