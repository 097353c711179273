package org.standwright.router.board;

import java.util.stream.Stream;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Mark;
import org.standwright.part.Face;
import org.standwright.router.RoutedPiece;
import org.standwright.router.machining.Machining;
import org.standwright.router.machining.Sizes;
import org.standwright.router.machining.Work;

/** A piece on a board and what is done to it. */
record Worked(RoutedPiece piece, Machining machining) {
    /** One mark on the board. */
    record Placing(Work work, Mark mark) {}

    static Worked of(RoutedPiece piece, Router router, double thickness, Sizes sizes) {
        var up = up(piece);
        return new Worked(piece, Machining.of(piece.part(), router, thickness, up, sizes));
    }

    /** What is cut as it lies. */
    Stream<Placing> above() {
        return placed(up(), true);
    }

    /** What is cut when the board is turned over. */
    Stream<Placing> below() {
        return placed(up().opposite(), false);
    }

    /** The face that is up as it lies. */
    Face up() {
        return up(piece);
    }

    private static Face up(RoutedPiece piece) {
        return piece.lie().overturned() ? Face.BENCH : Face.SHOW;
    }

    /** Label and name. */
    String name() {
        return piece.label() + " " + piece.part().name();
    }

    private Stream<Placing> placed(Face face, boolean first) {
        var mover = new Placed(piece.lie());
        return machining.on(face, first).stream()
                .map(operation -> new Placing(operation.work(), operation.mark().accept(mover)));
    }
}
