package org.standwright.router.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.drawing.plot.Mark;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Contour;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
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
        var machining = Machining.of(Part.blank("chip", PLY, 22, 15), SampleRouters.tabbed(), 18);
        assertThat(machining.remarks()).anyMatch(remark -> remark.contains("tabs only"));
    }

    private static List<Mark.Open> tabs(Part part) {
        return Machining.of(part, SampleRouters.tabbed(), 18).operations().stream()
                .filter(operation -> operation.work().kind() == Kind.TAB)
                .map(operation -> (Mark.Open) operation.mark())
                .toList();
    }
}
