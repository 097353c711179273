package org.standwright.router.plan.places;

import org.standwright.sheet.lane.Dice;
import org.standwright.sheet.lane.Layout;

/**
 * Lays missing pieces, large ones first, each where it leaves least beside it; one without a place begins a board if the
 * limit allows, or stays missing.
 */
final class Recreation {
    /** What the longer of both rests beside a piece counts against the shorter: at a tie only. */
    private static final double SECOND = 1e-9;

    /** By how much chance may enlarge a piece when the order is settled. */
    private static final double SPREAD = 0.25;
    /** Steps of that chance. */
    private static final int FACES = 1024;

    private final Terms terms;
    private final Dice dice;

    private Layout<Board> layout;
    private long limit;

    private int waiting;
    private final int[] types;
    private final double[] weights;

    private double cheapest;
    private int cheapestBoard;
    private boolean cheapestTurned;
    private int cheapestX;
    private int cheapestY;

    Recreation(Terms terms, Dice dice) {
        this.terms = terms;
        this.dice = dice;
        this.types = new int[terms.types()];
        this.weights = new double[terms.types()];
    }

    /** Lays what it can, begun boards costing no more than the limit together. */
    void fill(Layout<Board> target, long costLimit) {
        layout = target;
        limit = costLimit;
        gatherTypes();
        for (int i = 0; i < waiting; i++) {
            int type = types[i];
            while (layout.missing(type) > 0 && (findCheapest(type) || begin(type))) {
                if (cheapest < Double.POSITIVE_INFINITY) {
                    layout.own(cheapestBoard).place(type, cheapestTurned, cheapestX, cheapestY);
                    layout.place(type);
                }
            }
        }
        layout.dropUnused();
    }

    /** What is missing, in an order that changes with each call: large ones first, more or less. */
    private void gatherTypes() {
        waiting = 0;
        int by = dice.below(3);
        for (int type = 0; type < terms.types(); type++) {
            if (layout.missing(type) > 0) {
                double weight = size(type, by) * (1 + SPREAD * dice.below(FACES) / FACES);
                int at = waiting++;
                for (; at > 0 && weights[at - 1] < weight; at--) {
                    types[at] = types[at - 1];
                    weights[at] = weights[at - 1];
                }
                types[at] = type;
                weights[at] = weight;
            }
        }
    }

    private double size(int type, int by) {
        return switch (by) {
            case 0 -> terms.tally.area(type);
            case 1 -> Math.max(terms.length[type], terms.width[type]);
            default -> Math.min(terms.length[type], terms.width[type]);
        };
    }

    /** Begins a board of any kind that it fits and that the limit allows. */
    private boolean begin(int type) {
        int chosen = -1;
        int choices = 0;
        for (int kind = 0; kind < terms.tally.kinds(); kind++) {
            if (layout.affords(kind, limit) && terms.fits(type, kind) && dice.oneIn(++choices)) {
                chosen = kind;
            }
        }
        if (chosen < 0) {
            return false;
        }
        layout.add(Board.empty(terms, chosen, layout.owner()));
        return true;
    }

    private boolean findCheapest(int type) {
        cheapest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < layout.count(); i++) {
            var board = layout.board(i);
            if (!terms.fits(type, board.kind())) {
                continue;
            }
            if (terms.straight[type]) {
                offer(i, board, terms.length[type], terms.width[type], false);
            }
            if (terms.turned[type]) {
                offer(i, board, terms.width[type], terms.length[type], true);
            }
        }
        return cheapest < Double.POSITIVE_INFINITY;
    }

    /** A free rectangle costs what it leaves beside the piece on the tighter side, after the rule of best short side fit. */
    private void offer(int index, Board board, int along, int across, boolean turned) {
        var free = board.free();
        for (int i = free.count() - 1; i >= 0; i--) {
            int length = free.length(i);
            int width = free.width(i);
            if (along > length || across > width || dice.overlooks()) {
                continue;
            }
            int end = length - along;
            int beside = width - across;
            double cost = Math.min(end, beside) + SECOND * Math.max(end, beside);
            if (cost < cheapest) {
                cheapest = cost;
                cheapestBoard = index;
                cheapestTurned = turned;
                cheapestX = free.x(i);
                cheapestY = free.y(i);
            }
        }
    }
}
