package org.standwright.check.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.check.wall.Hung.figure;
import static org.standwright.check.wall.Hung.only;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.standwright.check.Finding;
import org.standwright.check.Severity;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.Things;
import org.standwright.design.wall.Wall;
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

    /** 3 1/2 in deep; 150 - 19.05 - 12.7 = 118.25 mm go in, and no screw of 150 mm is sold. */
    @Test
    void warnsOfScrewsThatComeOutAtTheBackOfAStud() {
        var through = new Hung();
        through.length = OptionalDouble.of(150);

        var findings = new CleatCables().check(through.hung());

        assertThat(findings).extracting(Finding::severity).containsExactly(Severity.NOTE, Severity.CAUTION);
        assertThat(findings.get(0).message()).startsWith("150 mm is not among the lengths of '#10': 50.8 mm, 63.5 mm");
        assertThat(findings.get(1).message()).contains("comes out at the back of a stud 88.9 mm deep");
        assertThat(only(new CleatCables(), new Hung().hung()).message()).doesNotContain("back of a stud");
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
    void warnsOfWhatBurnsBesideHeaters() {
        assertThat(only(new HangFlammable(), burning(List.of()).hung()).severity())
                .isEqualTo(Severity.NOTE);

        // none is hung above a heater; beside one it is hung, and said
        var beside = WallDraft.obstacle(Obstacle.Kind.RADIATOR, 1000, 200, 150, 500);
        var warned = only(new HangFlammable(), burning(List.of(beside)).hung());
        assertThat(warned.severity()).isEqualTo(Severity.CAUTION);
        assertThat(warned.message()).contains("'radiator'");

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

    /** 350 mm of panel from 1900 mm on: 762 mm of space from 1638 mm on, up to the end of the wall at 2400 mm. */
    private static Hung panelled(Obstacle... others) {
        var wall = new Hung();
        wall.width = 2400;
        wall.obstacles = Stream.concat(
                        Stream.of(WallDraft.obstacle(Obstacle.Kind.ELECTRICAL_PANEL, 1900, 1200, 350, 600)),
                        Stream.of(others))
                .toList();
        return wall;
    }

    private static Obstacle deep(Obstacle.Kind kind, double x, double bottom, double width, double depth) {
        var plain = WallDraft.obstacle(kind, x, bottom, width, 800);
        return new Obstacle(
                kind,
                plain.name(),
                x,
                bottom,
                plain.width(),
                plain.height(),
                depth,
                0,
                plain.margin(),
                plain.swing(),
                plain.stand());
    }

    @Test
    void stopsWhatStandsInTheWorkingSpaceOfAPanel() {
        var bench = only(
                new WallPanelSpace(),
                panelled(deep(Obstacle.Kind.BENCH, 900, 0, 800, 600)).hung());
        assertThat(bench.severity()).isEqualTo(Severity.STOP);
        assertThat(bench.message()).startsWith("'bench' stands in the working space before 'electrical panel'");

        var radiator = deep(Obstacle.Kind.RADIATOR, 1500, 100, 300, 90);
        assertThat(only(new WallPanelSpace(), panelled(radiator).hung()).severity())
                .isEqualTo(Severity.STOP);
    }

    /** Beside it, above 1981 mm, or flush. */
    @Test
    void leavesAloneWhatStandsBesideTheWorkingSpaceOfAPanel() {
        for (var other : List.of(
                deep(Obstacle.Kind.BENCH, 800, 0, 800, 600),
                deep(Obstacle.Kind.PIPE, 1700, 1990, 300, 80),
                deep(Obstacle.Kind.PIPE, 1700, 500, 100, 0))) {
            var finding = only(new WallPanelSpace(), panelled(capped(other)).hung());
            assertThat(finding.severity()).as(other.toString()).isEqualTo(Severity.NOTE);
            assertThat(finding.message()).startsWith("Nothing of this design is before it");
        }
    }

    /** No higher than the wall. */
    private static Obstacle capped(Obstacle old) {
        return new Obstacle(
                old.kind(),
                old.name(),
                old.x(),
                old.bottom(),
                old.width(),
                OptionalDouble.of(300),
                old.depth(),
                old.casing(),
                old.margin(),
                old.swing(),
                old.stand());
    }

    /** On the wall to the right, whose left end is the corner: 762 mm of space end 22 mm before it, for its strips. */
    @Test
    void stopsFurnitureOfTheNextWallBeforeAPanel() {
        assertThat(before(deep(Obstacle.Kind.BENCH, 300, 0, 500, 600))).isEqualTo(Severity.STOP);
        assertThat(before(deep(Obstacle.Kind.BENCH, 950, 0, 500, 600))).isEqualTo(Severity.NOTE);
        assertThat(before(deep(Obstacle.Kind.BENCH, 300, 0, 500, 20))).isEqualTo(Severity.NOTE);
    }

    private static Severity before(Obstacle next) {
        var design = panelled().design();
        var east = new Wall(
                "east",
                OptionalDouble.of(2000),
                OptionalDouble.of(2400),
                List.of(),
                Hung.studs(406.4, 812.8, 1219.2, 1625.6),
                List.of(next));
        var walls = new ArrayList<>(design.walls());
        walls.add(east);
        return only(new WallPanelSpace(), Hung.hung(walled(design, walls))).severity();
    }

    private static WallDesign walled(WallDesign old, List<Wall> walls) {
        return new WallDesign(
                old.name(),
                old.unit(),
                old.levelLine(),
                old.person(),
                walls,
                old.cleat(),
                old.rows(),
                old.fixing(),
                old.making(),
                List.of(),
                old.saw(),
                old.router(),
                old.stock(),
                old.cutting(),
                old.rules());
    }

    /** Strips of 609.6 x 88.9 mm on 1219.2 x 2400 mm. */
    @Test
    void coversLessThanTheBareWall() {
        assertThat(figure(new WallCoverage(), new Hung().hung()))
                .isCloseTo(609.6 * 88.9 / (1219.2 * 2400), within(1e-9));
    }
}
