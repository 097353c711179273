package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

/** The doors before one opening; the figures for hinges are common practice, no source. */
final class ReportedDoors {
    private static final double FROM_SHELF = 40;

    private final Report report;
    private final Entry written;

    ReportedDoors(Report report, Entry written) {
        this.report = report;
        this.written = written;
    }

    /** Half the height that a hinge takes, mm. */
    static double halfHinge(Entry door) {
        return door.text("/hinge/style").equals("butt")
                ? door.number("/hinge/length") / 2
                : Math.max(
                                door.number("/hinge/height"),
                                Math.max(door.number("/hinge/plateSpacing"), door.number("/hinge/cup")))
                        / 2;
    }

    void check(Entry section, Area opening, Panels panels) {
        var area = new ReportedReach(report).fronts(opening, panels);
        var doors = section.list("/doors");
        var hung = written.text("/hung");
        boolean pair = hung.equals("pair");
        double leaf = pair ? (area.width() - report.gap()) / 2 : area.width();
        assertThat(doors).hasSize(pair ? 2 : 1);
        new Area(area.x0(), area.z0(), area.x0() + leaf, area.z1())
                .isReported(doors.get(0).at("/front"), "door");
        if (pair) {
            new Area(area.x1() - leaf, area.z0(), area.x1(), area.z1())
                    .isReported(doors.get(1).at("/front"), "right door");
            assertThat(doors).extracting(door -> door.text("/hung")).containsExactly("left", "right");
        } else {
            assertThat(doors.get(0).text("/hung")).isEqualTo(report.written(hung));
        }
        new ReportedShelves(report, written).check(section, opening, doors);
        doors.forEach(door -> hinges(door, section, opening));
    }

    /** Even between the ends where nothing is in the way; within the opening and clear of fixed shelves always. */
    private void hinges(Entry door, Entry section, Area opening) {
        var front = Area.of(door.at("/front"));
        double height = front.height();
        var hinges = door.numbers("/hinges");
        assertThat(hinges).hasSize(height <= 900 ? 2 : height <= 1600 ? 3 : 4);
        double half = halfHinge(written);
        double end = Math.min(100, height / 5);
        for (int i = 0; i < hinges.size(); i++) {
            double at = front.z0() + hinges.get(i);
            assertThat(at).isBetween(opening.z0() + half - 1e-6, opening.z1() - half + 1e-6);
            double even = front.z0() + end + i * (height - 2 * end) / (hinges.size() - 1);
            double wanted = Math.max(opening.z0() + half, Math.min(opening.z1() - half, even));
            var shelves = fixed(section);
            if (shelves.stream().noneMatch(shelf -> isBeside(opening.z0() + shelf, wanted))) {
                assertThat(at).isCloseTo(wanted, within(1e-6));
            }
            assertThat(shelves).noneMatch(shelf -> isBeside(opening.z0() + shelf, at));
        }
        assertThat(hinges).isSorted();
    }

    private List<Double> fixed(Entry section) {
        return section.has("/shelfKind") && section.text("/shelfKind").equals("fixed")
                ? section.numbers("/shelves")
                : List.of();
    }

    private boolean isBeside(double underside, double hinge) {
        return hinge > underside - FROM_SHELF + 1e-6 && hinge < underside + report.panel() + FROM_SHELF - 1e-6;
    }
}
