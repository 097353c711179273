package org.standwright.viewer.scene.around;

import java.util.Optional;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Side;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/**
 * The room that boards need before and behind a machine, as wide as what they lie on, on its level.
 *
 * @param from the stand's side at which boards go in
 */
public record FeedWay(Side from, Box3 infeed, Box3 outfeed) {
    /** A board of usual length, mm (common practice, no source). */
    public static final double USUAL_BOARD = 2400;

    /** Room above the table that is drawn, mm. */
    private static final double HEIGHT = 100;

    /**
     * Of the machine's base; where the machine's table is the stand's worktop, of that. Nothing for a machine that boards
     * don't pass through.
     *
     * @param board length of a board, mm
     */
    public static Optional<FeedWay> of(Stand stand, double board) {
        var machine = stand.design().machine();
        int turn = stand.design().place().turn();
        var from = stand.machine()
                .map(placed -> placed.infeed())
                .orElseGet(() -> machine.feed().infeed().map(side -> side.turned(turn)));
        var table = stand.machine().map(placed -> placed.base()).orElseGet(stand::worktop);
        return from.map(side -> of(table, side, board));
    }

    static FeedWay of(Box3 table, Side from, double board) {
        return new FeedWay(from, beside(table, from, board), beside(table, from.turned(180), board));
    }

    private static Box3 beside(Box3 table, Side side, double board) {
        double z0 = table.max().z();
        double z1 = z0 + HEIGHT;
        var min = table.min();
        var max = table.max();
        return switch (side) {
            case FRONT -> new Box3(new Vec3(min.x(), min.y() - board, z0), new Vec3(max.x(), min.y(), z1));
            case BACK -> new Box3(new Vec3(min.x(), max.y(), z0), new Vec3(max.x(), max.y() + board, z1));
            case LEFT -> new Box3(new Vec3(min.x() - board, min.y(), z0), new Vec3(min.x(), max.y(), z1));
            case RIGHT -> new Box3(new Vec3(max.x(), min.y(), z0), new Vec3(max.x() + board, max.y(), z1));
        };
    }

    /** Around both. */
    public Box3 box() {
        return infeed.union(outfeed);
    }
}
