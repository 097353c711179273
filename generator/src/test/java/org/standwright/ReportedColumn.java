package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.Area.same;

import java.util.List;
import java.util.Map;

/** One bay from top to bottom: its sections with a panel between them, and what is in each. */
final class ReportedColumn {
    private static final Map<String, String> BUILT_AS =
            Map.of("open", "open", "clear", "clear", "door", "closed", "divided", "divided");

    private final Report report;
    private final Entry written;
    private final Entry built;

    ReportedColumn(Report report, Entry written, Entry built) {
        this.report = report;
        this.written = written;
        this.built = built;
    }

    void check(Area opening, Panels panels) {
        var shelfSpace = new ReportedHeights(report).of(written, opening.height(), panels);
        var sections = built.list("/sections");
        assertThat(shelfSpace).hasSameSizeAs(sections);
        double top = opening.z1();
        for (int i = 0; i < sections.size(); i++) {
            var here = panels.down(i, sections.size());
            var heights = shelfSpace.get(i);
            double height = heights.hasFronts()
                    ? new ReportedReach(report).openingBehind(heights.sum() + gaps(heights), here)
                    : heights.sum();
            var area = new Area(opening.x0(), top - height, opening.x1(), top);
            area.isReported(sections.get(i).at("/opening"), "section " + (i + 1) + " of bay " + built.text("/name"));
            section(sections.get(i), heights, area, here);
            top = area.z0() - report.panel();
        }
        same(top + report.panel(), opening.z0(), "lower edge of the last section");
    }

    private double gaps(ReportedHeights.Heights heights) {
        return (heights.each().size() - 1) * report.gap();
    }

    private void section(Entry section, ReportedHeights.Heights heights, Area opening, Panels panels) {
        var content = heights.contents().get(0);
        assertThat(section.kind()).isEqualTo(BUILT_AS.getOrDefault(content.kind(), "drawers"));
        switch (section.kind()) {
            case "drawers" -> drawers(section.list("/drawers"), heights.each(), opening, panels);
            case "closed" -> new ReportedDoors(report, content).check(section, opening, panels);
            case "divided" ->
                new ReportedBays(report).check(content.list("/bays"), section.list("/bays"), opening, panels);
            case "clear" -> assertThat(section.text("/use")).isEqualTo(content.text("/use"));
            default -> new ReportedShelves(report, content).check(section, opening, List.of());
        }
    }

    private void drawers(List<Entry> drawers, List<Double> heights, Area opening, Panels panels) {
        assertThat(drawers).hasSameSizeAs(heights);
        var area = new ReportedReach(report).fronts(opening, panels);
        double top = area.z1();
        for (int i = 0; i < heights.size(); i++) {
            var front = new Area(area.x0(), top - heights.get(i), area.x1(), top);
            front.isReported(
                    drawers.get(i).at("/front"), "front " + drawers.get(i).text("/name"));
            new ReportedDrawer(report, drawers.get(i)).check(front, opening, i == 0);
            top = front.z0() - report.gap();
        }
        same(top + report.gap(), area.z0(), "lower edge of the lowest front");
    }
}
