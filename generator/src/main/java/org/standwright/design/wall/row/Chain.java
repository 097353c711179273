package org.standwright.design.wall.row;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.geom.Grid;

/**
 * Strips one after the other in one run.
 *
 * @param covered length of all together, mm
 * @param alike how many of them are of the length wished for
 * @param known how many of them are of a length that rows below have
 * @param squares sum of the squares of their lengths, mm²: of as many that cover as much, the least where they differ least
 */
record Chain(List<Span> spans, double covered, int alike, int known, double squares) {
    static final Chain NONE = new Chain(List.of(), 0, 0, 0, 0);

    Chain {
        spans = List.copyOf(spans);
    }

    Chain with(Span next, double wished, List<Double> lengthsBelow) {
        double length = next.along().length();
        return new Chain(
                Stream.concat(spans.stream(), Stream.of(next)).toList(),
                covered + length,
                alike + (Grid.same(length, wished) ? 1 : 0),
                known + (lengthsBelow.stream().anyMatch(below -> Grid.same(below, length)) ? 1 : 0),
                squares + length * length);
    }

    /** More covered first, then fewer strips, more of the wished length, more of known lengths, more even ones. */
    boolean beats(Chain other) {
        if (!Grid.same(covered, other.covered)) {
            return covered > other.covered;
        }
        if (spans.size() != other.spans.size()) {
            return spans.size() < other.spans.size();
        }
        if (alike != other.alike) {
            return alike > other.alike;
        }
        return known == other.known ? Grid.less(squares, other.squares) : known > other.known;
    }
}
