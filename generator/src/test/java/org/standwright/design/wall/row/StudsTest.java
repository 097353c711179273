package org.standwright.design.wall.row;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.Refused;
import org.standwright.design.wall.WallDraft;
import org.standwright.design.wall.area.WallOutline;
import org.standwright.design.wall.built.Stud;
import org.standwright.geom.Interval;
import org.standwright.unit.Units;

class StudsTest {
    /** Studs 16 in apart and a strip of 4 ft from one of them: references 4. */
    @Test
    void sixteenInchesApartFourOfThemCarryAStripOfFourFeetThatStartsOnOne() {
        var studs = of(1700, WallDraft.spaced(406.4, 406.4));
        var strip = new Interval(406.4, 406.4 + 1219.2);

        assertThat(RowText.numbers(studs.subList(0, 3).stream().map(Stud::x).toList()))
                .isEqualTo("406.4 812.8 1219.2");
        assertThat(studs.stream().filter(stud -> strip.holds(stud.x()))).hasSize(4);
    }

    @Test
    void listedStudsStayWhereTheyAre() {
        assertThat(of(1700, WallDraft.listed(0.0, 410.0, 790.0, 1700.0)))
                .containsExactly(new Stud(1, 0, 38), new Stud(2, 410, 38), new Stud(3, 790, 38), new Stud(4, 1700, 38));
    }

    @Test
    void masonryTakesAnchorsAtItsSpacing() {
        var masonry = new Framing.Masonry(0, OptionalDouble.of(500), 100, List.of(), "nylon anchor 8 mm", 8, 40);

        assertThat(of(1700, masonry)).extracting(Stud::x).containsExactly(100.0, 600.0, 1100.0, 1600.0);
        assertThat(of(1700, masonry)).extracting(Stud::width).containsOnly(0.0);
    }

    @Test
    void refusesFramingWithoutPlaces() {
        Refused.at("/walls/0/framing/positions", () -> of(1700, WallDraft.listed()))
                .isEqualTo("Studs of wall 'north' have neither a spacing nor positions."
                        + " Give their spacing and the first one, or list the centres of all.");
    }

    @Test
    void refusesSpacingAndPositionsTogether() {
        var both = new Framing.SteelStuds(12.5, OptionalDouble.of(400), 0, List.of(0.0, 400.0), 40);

        Refused.at("/walls/0/framing/positions", () -> of(1700, both))
                .startsWith("Studs of wall 'north' have a spacing and positions, which may differ.");
    }

    @Test
    void refusesAListOutOfOrderWithTheListInOrder() {
        Refused.at("/walls/0/framing/positions", () -> of(1700, WallDraft.listed(400.0, 1200.5, 800.0, 800.0)))
                .isEqualTo("Positions of studs of wall 'north' run from the left, but 800 mm follows 1200.5 mm."
                        + " In order they are 400 mm, 800 mm, 1200.5 mm.");
    }

    @Test
    void refusesAStudOutsideTheWall() {
        Refused.at("/walls/0/framing/positions/2", () -> of(1700, WallDraft.listed(400.0, 800.0, 1750.0)))
                .isEqualTo("A stud at 1750 mm is not on wall 'north', which runs from 0 to 1700 mm."
                        + " Measure its centre from the wall's left end.");
        Refused.at("/walls/0/framing/first", () -> of(1700, WallDraft.spaced(400, -20)))
                .startsWith("A stud at -20 mm is not on wall 'north'");
    }

    @Test
    void refusesASpacingThatIsNone() {
        Refused.at("/walls/0/framing/spacing", () -> of(1700, WallDraft.spaced(40, 0)))
                .isEqualTo("Studs of wall 'north' are 40 mm apart, but must be 50 mm or more from centre to centre."
                        + " Measure from one stud's centre to the next one's.");
    }

    @Test
    void refusesASingleStud() {
        Refused.at("/walls/0/framing/spacing", () -> of(700, WallDraft.spaced(400, 350)))
                .isEqualTo("Wall 'north', 700 mm wide, has 1 stud, but a strip is screwed to two at least."
                        + " Look for another stud, for example at the wall's ends, and list the centres of all.");
    }

    private static List<Stud> of(double width, Framing framing) {
        var wall = WallDraft.framed(WallDraft.wall("north", width, 2400), framing);
        return Studs.of(wall, WallOutline.of(wall, Units.MM, "/walls/0"), Units.MM, "/walls/0");
    }
}
