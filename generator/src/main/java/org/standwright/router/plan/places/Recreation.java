package org.standwright.router.plan.places;

import org.standwright.sheet.search.Dice;

/**
 * Lays missing pieces where they cost least: the type with the fewest places goes first; one without a place begins a
 * board if the limit allows, or stays missing.
 */
final class Recreation {
    /** What the longer of both rests beside a piece counts against the shorter: at a tie only. */
    private static final double SECOND = 1e-9;

    private final Terms terms;
    private final Dice dice;

    private Layout layout;
    private long limit;

    private int waiting;
    private final int[] types;
    private final int[] places;

    private double cheapest;
    private int cheapestBoard;
    private boolean cheapestTurned;
    private int cheapestX;
    private int cheapestY;

    Recreation(Terms terms, Dice dice) {
        this.terms = terms;
        this.dice = dice;
        this.types = new int[terms.types()];
        this.places = new int[terms.types()];
    }

    /** Lays what it can, begun boards costing no more than the limit together. */
    void fill(Layout target, long costLimit) {
        layout = target;
        limit = costLimit;
        gatherTypes();
        while (waiting > 0) {
            int place = scarcest();
            int type = types[place];
            if (places[place] > 0 && findCheapest(type)) {
                layCheapest(type);
                if (layout.missing(type) == 0) {
                    drop(place);
                }
            } else if (places[place] > 0) {
                places[place] = 0; // all overlooked
            } else if (!begin(type)) {
                drop(place);
            }
        }
        layout.dropUnused();
    }

    private void gatherTypes() {
        waiting = 0;
        for (int type = 0; type < terms.types(); type++) {
            if (layout.missing(type) > 0) {
                types[waiting] = type;
                places[waiting] = 0;
                waiting++;
            }
        }
        for (int i = 0; i < layout.count(); i++) {
            count(layout.board(i), 1);
        }
    }

    /** Adds a board's places for all that waits, or takes them off. */
    private void count(Board board, int sign) {
        for (int i = 0; i < waiting; i++) {
            places[i] += sign * count(types[i], board);
        }
    }

    private int count(int type, Board board) {
        if (!terms.fits(type, board.kind())) {
            return 0;
        }
        var free = board.free();
        int along = terms.length[type];
        int across = terms.width[type];
        boolean straight = terms.straight[type];
        boolean turned = terms.turned[type];
        int found = 0;
        for (int i = free.count() - 1; i >= 0; i--) {
            int length = free.length(i);
            int width = free.width(i);
            if (straight && along <= length && across <= width) {
                found++;
            }
            if (turned && across <= length && along <= width) {
                found++;
            }
        }
        return found;
    }

    private void drop(int place) {
        waiting--;
        types[place] = types[waiting];
        places[place] = places[waiting];
    }

    /** Of the waiting types the one with the fewest places, any of them at a tie. */
    private int scarcest() {
        int scarcest = 0;
        int ties = 1;
        for (int i = 1; i < waiting; i++) {
            if (places[i] < places[scarcest]) {
                scarcest = i;
                ties = 1;
            } else if (places[i] == places[scarcest] && dice.oneIn(++ties)) {
                scarcest = i;
            }
        }
        return scarcest;
    }

    /** Begins a board of any kind that it fits and that the limit allows. */
    private boolean begin(int type) {
        int chosen = -1;
        int choices = 0;
        for (int kind = 0; kind < terms.cost.length; kind++) {
            if (layout.has(kind)
                    && layout.cost() + terms.cost[kind] <= limit
                    && terms.fits(type, kind)
                    && dice.oneIn(++choices)) {
                chosen = kind;
            }
        }
        if (chosen < 0) {
            return false;
        }
        count(layout.begin(chosen), 1);
        return true;
    }

    private void layCheapest(int type) {
        count(layout.board(cheapestBoard), -1);
        layout.place(cheapestBoard, type, cheapestTurned, cheapestX, cheapestY);
        count(layout.board(cheapestBoard), 1);
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
