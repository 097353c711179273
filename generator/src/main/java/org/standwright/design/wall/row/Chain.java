package org.standwright.design.wall.row;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.geom.Grid;

/**
 * Strips one after the other in one run.
 *
 * @param covered length of all together, mm
 * @param alike how many of them are of the length wished for
 */
record Chain(List<Span> spans, double covered, int alike) {
    static final Chain NONE = new Chain(List.of(), 0, 0);

    Chain {
        spans = List.copyOf(spans);
    }

    Chain with(Span next, double wished) {
        double length = next.along().length();
        return new Chain(
                Stream.concat(spans.stream(), Stream.of(next)).toList(),
                covered + length,
                alike + (Grid.same(length, wished) ? 1 : 0));
    }

    /** More covered first, then fewer strips, then more of the wished length. */
    boolean beats(Chain other) {
        if (!Grid.same(covered, other.covered)) {
            return covered > other.covered;
        }
        if (spans.size() != other.spans.size()) {
            return spans.size() < other.spans.size();
        }
        return alike > other.alike;
    }
}
