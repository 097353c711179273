package org.standwright.design.top;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Rect;

/** What something cut into a board has to stay clear of, and the part of the board that it has to stay in. */
record Surroundings(Rect board, List<Taken> taken) {
    /** Wood left to an edge, mm; common practice, no source. */
    static final double EDGE = 20;

    Surroundings {
        taken = List.copyOf(taken);
    }

    /** The worktop: uprights below it, the front edge of the sub-top, and the machine's bolts. */
    static Surroundings ofWorktop(Frame frame, UnderTop under, MachineBolts bolts) {
        var taken = new ArrayList<>(under.uprights());
        var subTop = Seen.FROM_ABOVE.of(under.subTop());
        taken.add(new Taken(
                "the front edge of the sub-top", new Rect(subTop.x0(), subTop.y0(), subTop.x1(), subTop.y0() + EDGE)));
        taken.addAll(bolts.taken());
        return new Surroundings(Taken.grown(WorktopSize.outline(frame), -EDGE), taken);
    }

    Surroundings and(Taken more) {
        var all = new ArrayList<>(taken);
        all.add(more);
        return new Surroundings(board, all);
    }

    /** What a rectangle that is not free meets. */
    String trouble(Rect body) {
        return taken.stream()
                .filter(other -> other.meets(body))
                .findFirst()
                .map(other -> "meets " + other.what())
                .orElse("comes too near an edge");
    }
}
