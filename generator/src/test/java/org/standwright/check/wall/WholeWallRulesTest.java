package org.standwright.check.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.check.wall.Hung.figure;
import static org.standwright.check.wall.Hung.only;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.check.Finding;
import org.standwright.check.Severity;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.Things;
import org.standwright.design.wall.WallDraft;

/** Rules of whole walls, on the wall of the worked example. */
class WholeWallRulesTest {

    /** 76.2 - 19.05 - 12.7 = 44.45 mm; a screw of 63.5 mm goes 31.75 mm in. */
    @Test
    void warnsOfScrewsDeeperThanCablesLie() {
        var deep = only(new CleatCables(), new Hung().hung());
        assertThat(deep.gauge().orElseThrow().figure()).isCloseTo(44.45, within(1e-6));
        assertThat(deep.severity()).isEqualTo(Severity.CAUTION);
        assertThat(deep.remedies())
                .singleElement()
                .satisfies(remedy -> assertThat(remedy.words()).contains("63.5 mm"));

        var brief = new Hung();
        brief.length = OptionalDouble.of(63.5);
        assertThat(only(new CleatCables(), brief.hung()).severity()).isEqualTo(Severity.FINE);
    }

    @Test
    void warnsOfTheStudsBesideAnOutlet() {
        var wired = new Hung();
        wired.length = OptionalDouble.of(63.5);
        wired.obstacles = List.of(WallDraft.obstacle(Obstacle.Kind.OUTLET, 500, 300, 80, 120));

        assertThat(new CleatCables().check(wired.hung()))
                .filteredOn(finding -> finding.severity() == Severity.CAUTION)
                .extracting(Finding::subject)
                .containsExactly("north, outlet, stud at 406.4 mm", "north, outlet, stud at 812.8 mm");
    }

    @Test
    void keepsWhatBurnsFromHeatersBelowAndBeside() {
        assertThat(only(new HangFlammable(), burning(List.of()).hung()).severity())
                .isEqualTo(Severity.NOTE);

        var below = WallDraft.obstacle(Obstacle.Kind.RADIATOR, 300, 200, 600, 500);
        var warned = only(new HangFlammable(), burning(List.of(below)).hung());
        assertThat(warned.severity()).isEqualTo(Severity.CAUTION);
        assertThat(warned.message()).contains("'radiator'");

        var above = WallDraft.obstacle(Obstacle.Kind.RADIATOR, 300, 1900, 600, 300);
        assertThat(only(new HangFlammable(), burning(List.of(above)).hung()).severity())
                .isEqualTo(Severity.NOTE);

        assertThat(new HangFlammable().check(new Hung().hung())).isEmpty();
    }

    private static Hung burning(List<Obstacle> obstacles) {
        var wall = new Hung();
        wall.obstacles = obstacles;
        var plain = Hung.panel("solvents", 2);
        var old = plain.things();
        wall.holders = List.of(new Holder.Panel(
                plain.name(),
                new Things(1, old.width(), old.depth(), old.height(), old.mass(), old.use(), true),
                plain.place(),
                false,
                plain.width(),
                plain.height()));
        return wall;
    }

    /** 406.4 mm hang on a strip of 609.6 mm, and 500 mm more find no room. */
    @Test
    void namesHoldersThatHangNowhere() {
        var crowded = new Hung();
        crowded.holders = List.of(Hung.panel("first", 2), Hung.panel("second", 2, 500, false, Optional.empty()));

        var cautions = new WallLeftOut()
                .check(crowded.hung()).stream()
                        .filter(finding -> finding.severity() == Severity.CAUTION)
                        .toList();

        assertThat(cautions).singleElement().satisfies(finding -> {
            assertThat(finding.subject()).isEqualTo("second");
            assertThat(finding.message()).startsWith("It hangs nowhere: ");
        });
        assertThat(new WallLeftOut().check(new Hung().hung()))
                .noneMatch(finding -> finding.severity() == Severity.CAUTION);
    }

    @Test
    void saysWhatStaysFreeBeforeAnElectricalPanel() {
        assertThat(new WallPanelSpace().check(new Hung().hung())).isEmpty();

        var panelled = new Hung();
        panelled.width = 2400;
        panelled.obstacles = List.of(WallDraft.obstacle(Obstacle.Kind.ELECTRICAL_PANEL, 1900, 1200, 350, 600));
        assertThat(only(new WallPanelSpace(), panelled.hung()).message())
                .contains("914.4 mm", "762 mm", "1981.2 mm", "no legal advice");
    }

    /** Strips of 609.6 x 88.9 mm on 1219.2 x 2400 mm. */
    @Test
    void coversLessThanTheBareWall() {
        assertThat(figure(new WallCoverage(), new Hung().hung()))
                .isCloseTo(609.6 * 88.9 / (1219.2 * 2400), within(1e-9));
    }
}
