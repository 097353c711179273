package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.standwright.part.Part;

/** That the judge finds what it looks for, and nothing else. */
class SelfCrossingsTest {
    private static final int MM = Solid.PER_MM;
    /** 100 x 100 x 18. */
    private static final Part BOARD = Part.blank("board", SampleParts.PLYWOOD, 100, 100);

    /** Two boards as one solid, the other shifted by so many grid steps. */
    private static Solid two(int x, int y, int z) {
        var one = Solids.of(BOARD);
        int[] shift = {x, y, z};
        int n = one.vertexCount();
        var vertices = new int[6 * n];
        for (int i = 0; i < n; i++) {
            double[] at = {one.vertex(i).x(), one.vertex(i).y(), one.vertex(i).z()};
            for (int axis = 0; axis < 3; axis++) {
                vertices[3 * i + axis] = (int) (at[axis] * MM);
                vertices[3 * (n + i) + axis] = (int) (at[axis] * MM) + shift[axis];
            }
        }
        var triangles = IntStream.range(0, 6 * one.triangleCount())
                .map(i -> one.corner(i / 3 % one.triangleCount(), i % 3) + (i < 3 * one.triangleCount() ? 0 : n))
                .toArray();
        return new Solid(vertices, triangles);
    }

    @Test
    void boardsThatReachIntoEachOtherCross() {
        assertThat(SelfCrossings.of(two(50 * MM, 40 * MM, 8 * MM))).isNotEmpty();
    }

    @Test
    void oneGridStepIsEnough() {
        var crossings = SelfCrossings.of(two(100 * MM - 1, 50 * MM, 9 * MM));

        assertThat(crossings).isNotEmpty();
        double deepest =
                crossings.stream().mapToDouble(SelfCrossings.Pair::depth).max().orElseThrow();
        assertThat(deepest).isCloseTo(1.0 / MM, within(1e-9));
    }

    @Test
    void boardsThatTouchInAnEdgeOrACornerDoNotCross() {
        assertThat(SelfCrossings.of(two(100 * MM, 0, 18 * MM))).isEmpty();
        assertThat(SelfCrossings.of(two(100 * MM, 50 * MM, 18 * MM))).isEmpty();
        assertThat(SelfCrossings.of(two(100 * MM, 100 * MM, 18 * MM))).isEmpty();
    }

    @Test
    void facesInOnePlaneMayMeetInTheirBordersOnly() {
        assertThat(SelfCrossings.of(two(50 * MM, 50 * MM, 18 * MM))).isNotEmpty();
        assertThat(SelfCrossings.of(two(100 * MM, 30 * MM, 18 * MM))).isEmpty();
        assertThat(SelfCrossings.of(two(101 * MM, 30 * MM, 0))).isEmpty();
    }

    @Test
    void exactSignsSurviveLongDistances() {
        int far = 1 << 23;
        int[] a = {0, 0, 0};
        int[] b = {far, far - 1, 1};
        int[] c = {far - 1, far, 1};

        // b and c add up to a point of their plane; one step above it is on its other side than one below
        assertThat(Predicates.side(a, b, c, new int[] {2 * far - 1, 2 * far - 1, 3}))
                .isEqualTo(1);
        assertThat(Predicates.side(a, b, c, new int[] {2 * far - 1, 2 * far - 1, 1}))
                .isEqualTo(-1);
        assertThat(Predicates.side(a, b, c, new int[] {2 * far - 1, 2 * far - 1, 2}))
                .isZero();
    }
}
