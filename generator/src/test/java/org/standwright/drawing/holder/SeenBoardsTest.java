package org.standwright.drawing.holder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.Designs;
import org.standwright.drawing.figure.Sight;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Part;

class SeenBoardsTest {
    static Stream<EqualHolders> holders() {
        return BenchHolders.equal("mm").stream();
    }

    @ParameterizedTest
    @MethodSource("holders")
    void theOutlineOfEachBoardIsDrawnOnceWhereverThereIsWood(EqualHolders holder) {
        for (var sight : List.of(Sight.FRONT, Sight.RIGHT)) {
            var seen = SeenBoards.of(holder.boards(), sight);
            var drawn = new ArrayList<>(seen.visible());
            drawn.addAll(seen.hidden());
            for (var board : holder.boards()) {
                for (var piece : wood(holder, board, sight)) {
                    assertThat(drawn)
                            .as("%s from %s: %s", board.label(), sight, piece)
                            .filteredOn(line -> passes(line, piece.at(0.4)) && passes(line, piece.at(0.6)))
                            .hasSize(1);
                }
            }
        }
    }

    /** Of a board's outline, cut so small that each piece is drawn as a whole or not at all. */
    private static List<Segment> wood(EqualHolders holder, PlacedPart board, Sight sight) {
        var silhouette = new Silhouette(board, sight);
        var all = new ArrayList<>(silhouette.rims());
        holder.boards().forEach(other -> all.addAll(new Silhouette(other, sight).outline()));
        return silhouette.outline().stream()
                .flatMap(side -> side.cutBy(all).stream())
                .filter(piece -> silhouette.nearness(piece).isPresent())
                .toList();
    }

    private static boolean passes(Segment line, Vec2 point) {
        double there =
                line.from().minus(point).length() + line.to().minus(point).length();
        return there - line.length() < 1e-9;
    }

    /** By hand: 100 × 40 before 60 × 80, which stands 20 in from the left and reaches 40 above it. */
    @Test
    void aNearerBoardHidesWhatLiesBehindIt() {
        var near = facing("near", 100, 40, new Vec3(0, 0, 0), List.of());
        var far = facing("far", 60, 80, new Vec3(20, 50, 0), List.of());

        var seen = SeenBoards.of(List.of(near, far), Sight.FRONT);

        assertThat(seen.hidden())
                .containsExactlyInAnyOrder(
                        segment(80, 0, 80, 40),
                        segment(20, 40, 20, 0)); // its lower edge lies on that of the nearer one
        assertThat(seen.visible()).hasSize(4 + 3).contains(segment(80, 40, 80, 80), segment(20, 80, 20, 40));
    }

    /** A board lies in a dado of the other one's face, which is cut away there over the whole length. */
    @Test
    void whereADadoRunsRightThroughThereIsNoEdge() {
        double t = Designs.BOARD_18.material().thickness();
        var back = facing("back", 100, 80, new Vec3(0, 0, 0), List.of(Channel.along(Face.SHOW, 30, 30 + t, 100, 6)));
        var shelf = new PlacedPart(
                "shelf",
                Part.blank("shelf", Designs.BOARD_18.material(), 100, 50),
                new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(0, -t + 6 - 50, 30)));

        var seen = SeenBoards.of(List.of(back, shelf), Sight.RIGHT);

        assertThat(seen.hidden()).isEmpty();
        assertThat(seen.visible()).noneMatch(line -> passes(line, new Vec2(-t, 30 + t / 2)));
        assertThat(seen.visible()).anyMatch(line -> passes(line, new Vec2(-t + 6, 30 + t / 2)));
    }

    private static PlacedPart facing(String name, double length, double width, Vec3 at, List<Channel> cuts) {
        var part = Part.blank(name, Designs.BOARD_18.material(), length, width).with(cuts);
        return new PlacedPart(name, part, new Placement(Axis.X_PLUS, Axis.Z_PLUS, at));
    }

    private static Segment segment(double x0, double y0, double x1, double y1) {
        return new Segment(new Vec2(x0, y0), new Vec2(x1, y1));
    }
}
