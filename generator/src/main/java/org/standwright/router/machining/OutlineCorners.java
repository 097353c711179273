package org.standwright.router.machining;

import java.util.List;
import java.util.stream.IntStream;
import org.standwright.geom.Outline;

/** Corners of an outline that a round bit, which goes round it outside, leaves round. */
final class OutlineCorners {
    private static final double STRAIGHT = -1e-6;

    private OutlineCorners() {}

    static List<String> remarks(Outline outline, double bit) {
        var left = IntStream.range(0, outline.corners().size())
                .filter(i -> Corner.of(outline, i).turn() < STRAIGHT)
                .mapToObj(outline::corner)
                .toList();
        return left.isEmpty()
                ? List.of()
                : List.of("corners of the outline that point inwards stay round by " + Mm.of(bit / 2)
                        + " mm: square them by hand if something fits there, at " + Places.of(left));
    }
}
