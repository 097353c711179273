package org.standwright.router.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.drawing.plot.Mark;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Run;
import org.standwright.router.SampleRouters;

class TabsTest {
    private static final Material PLY = new Material("ply", 18, 700, Grain.NONE);

    /** References 9 [P]: about one a foot (300 mm), three a part at least, small parts four. */
    @ParameterizedTest
    @CsvSource({"200, 150, 3", "150, 60, 4", "600, 300, 6", "2000, 500, 17"})
    void setsOneEvery300MillimetresAndThreeOrFourAtLeast(double length, double width, int count) {
        assertThat(tabs(Part.blank("part", PLY, length, width))).hasSize(count);
    }

    @Test
    void keepsTabsOffCornersAndOffWhatRunsOutPastTheEdge() {
        var outline = new Outline(List.of(
                new Vec2(0, 0),
                new Vec2(600, 0),
                new Vec2(600, 150),
                new Vec2(300, 150),
                new Vec2(300, 300),
                new Vec2(0, 300)));
        var notch = new Rect(100, 0, 400, 60);
        var part = Part.blank("part", PLY, 600, 300)
                .with(new Contour(outline, "step"), Pocket.through(notch, 10, "notch"));
        var tabs = tabs(part);

        assertThat(tabs).hasSizeGreaterThanOrEqualTo(3);
        for (var tab : tabs) {
            var from = tab.points().get(0);
            var to = tab.points().get(1);
            assertThat(to.minus(from).length()).isCloseTo(8, within(1e-9));
            assertThat(outline.corners())
                    .allMatch(corner -> Math.min(
                                    corner.minus(from).length(),
                                    corner.minus(to).length())
                            >= 6.35 - 1e-9);
            assertThat(Flat.of(outline).getBoundary().distance(Flat.point(from)))
                    .isLessThan(1e-9);
            assertThat(Flat.of(Outline.of(notch)).distance(Flat.line(from, to))).isGreaterThanOrEqualTo(6.3);
        }
    }

    @Test
    void saysWhereThereIsRoomForTooFew() {
        var machining = SampleRouters.machining(Part.blank("chip", PLY, 22, 15), SampleRouters.tabbed(), 18);
        assertThat(machining.cautions()).singleElement().asString().startsWith("room for 2 of 4 tabs only");
    }

    /** Rabbets 6 deep from above on three edges leave 12 mm of wood under them, more than a tab's 3 mm and 1 mm. */
    @Test
    void setsTabsUnderWhatIsCutFromAbove() {
        var part = Part.blank("side", PLY, 800, 500).with(rabbets(Face.SHOW, 6));
        assertThat(edges(tabs(part))).containsExactly("high", "left", "low", "right");
        assertThat(cautions(part)).isEmpty();

        var deep = Part.blank("side", PLY, 800, 500).with(rabbets(Face.SHOW, 15));
        assertThat(edges(tabs(deep))).as("3 mm are left: too little").containsExactly("low");
        assertThat(cautions(deep)).singleElement().asString().contains("on one edge or on neighbouring edges only");

        var below = Part.blank("side", PLY, 800, 500)
                .with(rabbets(Face.BENCH, 6))
                .with(Hole.blind(Face.SHOW, 400, 250, 8, 5, "pin"));
        assertThat(edges(tabs(below))).as("open at the lower face").containsExactly("low");
    }

    private static Feature[] rabbets(Face face, double depth) {
        return new Feature[] {
            new Channel(face, Run.ACROSS, new Rect(0, 0, 10, 500), depth),
            new Channel(face, Run.ACROSS, new Rect(790, 0, 800, 500), depth),
            new Channel(face, Run.ALONG, new Rect(0, 490, 800, 500), depth)
        };
    }

    private static Set<String> edges(List<Mark.Open> tabs) {
        var edges = new TreeSet<String>();
        for (var tab : tabs) {
            var middle = tab.points().get(0).plus(tab.points().get(1)).times(0.5);
            edges.add(middle.x() < 1 ? "left" : middle.x() > 799 ? "right" : middle.y() < 1 ? "low" : "high");
        }
        return edges;
    }

    private static List<String> cautions(Part part) {
        return SampleRouters.machining(part, SampleRouters.tabbed(), 18).cautions();
    }

    /** Whole below are the low edge and a little on both sides of one corner: its two places are near each other. */
    @Test
    void addsATabOnTheEdgeAcross() {
        var part = Part.blank("side", PLY, 800, 500)
                .with(
                        new Channel(Face.BENCH, Run.ACROSS, new Rect(0, 0, 10, 500), 6),
                        new Channel(Face.BENCH, Run.ACROSS, new Rect(790, 0, 800, 470), 6),
                        new Channel(Face.BENCH, Run.ALONG, new Rect(0, 490, 770, 500), 6),
                        Hole.blind(Face.SHOW, 400, 250, 8, 5, "pin"));
        assertThat(edges(tabs(part))).containsExactly("high", "low", "right");
        assertThat(cautions(part)).isEmpty();
    }

    /** A notch from below takes all of one long edge but its ends, and the ends are short: the rest is not crowded. */
    @Test
    void setsNoTwoTabsSideBySide() {
        var part = Part.blank("side", PLY, 800, 500)
                .with(new Channel(Face.BENCH, Run.ALONG, new Rect(0, 490, 800, 500), 6))
                .with(new Channel(Face.BENCH, Run.ACROSS, new Rect(0, 60, 10, 500), 6))
                .with(new Channel(Face.BENCH, Run.ACROSS, new Rect(790, 60, 800, 500), 6))
                .with(Hole.blind(Face.SHOW, 400, 250, 8, 5, "pin"));
        var tabs = tabs(part);
        for (var one : tabs) {
            for (var other : tabs) {
                double apart = one.points().get(0).minus(other.points().get(0)).length();
                assertThat(one == other || apart > 60)
                        .as("%s and %s", one, other)
                        .isTrue();
            }
        }
        assertThat(tabs).hasSizeGreaterThanOrEqualTo(4);
    }

    private static List<Mark.Open> tabs(Part part) {
        return SampleRouters.machining(part, SampleRouters.tabbed(), 18).operations().stream()
                .filter(operation -> operation.work().kind() == Kind.TAB)
                .map(operation -> (Mark.Open) operation.mark())
                .toList();
    }
}
