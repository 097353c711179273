package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.Area.same;

import java.util.List;

/** The carcass and its openings, and what stands in them, worked out again. */
final class ReportedBays {
    private final Report report;

    ReportedBays(Report report) {
        this.report = report;
    }

    void check() {
        double panel = report.panel();
        double width = report.plan(true);
        same(report.number("/carcass/min/0"), 0, "left of the carcass");
        same(report.number("/carcass/min/1"), 0, "front of the carcass");
        same(report.number("/carcass/max/0"), width, "right of the carcass");
        same(report.number("/carcass/max/1"), report.plan(false), "back of the carcass");
        var opening = new Area(
                panel, report.number("/carcass/min/2") + panel, width - panel, report.number("/carcass/max/2") - panel);
        check(report.list("/design/bays"), report.list("/bays"), opening, Panels.OF_CARCASS);
    }

    /** The bays side by side in an opening: given widths as given, the others share what the panels between leave. */
    void check(List<Entry> asWritten, List<Entry> built, Area around, Panels panels) {
        var written = report.asBuilt(asWritten);
        assertThat(built).hasSameSizeAs(written);
        int count = built.size();
        double left = around.x0();
        for (int i = 0; i < count; i++) {
            double right = left + written.get(i).number("/width", share(written, around.width()));
            var opening = new Area(left, around.z0(), right, around.z1());
            opening.isReported(
                    built.get(i).at("/opening"), "bay " + built.get(i).text("/name"));
            new ReportedColumn(report, written.get(i), built.get(i)).check(opening, panels.across(i, count));
            left = right + report.panel();
        }
        same(left - report.panel(), around.x1(), "right edge of the last opening");
    }

    private double share(List<Entry> bays, double width) {
        double given = bays.stream().mapToDouble(bay -> bay.number("/width", 0)).sum();
        long sharing = bays.stream().filter(bay -> !bay.has("/width")).count();
        return (width - (bays.size() - 1) * report.panel() - given) / sharing;
    }
}
