package org.standwright.sheet.search;

import java.util.Arrays;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.lane.Dice;
import org.standwright.sheet.lane.Layout;

/**
 * Lays missing pieces where they cost least: the type with the fewest places goes first; one without a place begins a
 * board if the limit allows, or stays missing. All rests of all boards stand in flat lists meanwhile.
 */
final class Recreation {
    private final Terms terms;
    private final Dice dice;
    private final boolean overlooks;

    private Layout<Board> layout;
    private long limit;

    private int rests;
    private int[] board = new int[64];
    private int[] node = new int[64];
    private int[] length = new int[64];
    private int[] width = new int[64];
    private int[] stages = new int[64];
    private boolean[] mating = new boolean[64];
    private double[] worth = new double[64];

    private int waiting;
    private final int[] types;
    private final int[] places;

    private double cheapest;
    private int cheapestRest;
    private boolean cheapestTurned;
    private boolean cheapestRipFirst;

    /** @param overlooks whether one candidate in twenty is passed over */
    Recreation(Terms terms, Dice dice, boolean overlooks) {
        this.terms = terms;
        this.dice = dice;
        this.overlooks = overlooks;
        this.types = new int[terms.types()];
        this.places = new int[terms.types()];
    }

    /** Lays what it can, begun boards costing no more than the limit together. */
    void fill(Layout<Board> target, long costLimit) {
        layout = target;
        limit = costLimit;
        gatherRests();
        gatherTypes();
        while (waiting > 0) {
            int place = scarcest();
            int type = types[place];
            if (places[place] > 0) {
                if (insertCheapest(type) && layout.missing(type) == 0) {
                    drop(place);
                }
            } else if (!begin(type)) {
                drop(place);
            }
        }
        layout.dropEach(Board::isWhole);
    }

    /** Lays all pieces of one type, on new boards where it has to. */
    boolean place(Layout<Board> target, int type, long costLimit) {
        layout = target;
        limit = costLimit;
        gatherRests();
        waiting = 0;
        while (layout.missing(type) > 0) {
            if (!insertCheapest(type) && !begin(type)) {
                return false;
            }
        }
        return true;
    }

    private void gatherRests() {
        rests = 0;
        for (int i = 0; i < layout.count(); i++) {
            var from = layout.board(i);
            for (int rest = 0; rest < from.restCount(); rest++) {
                add(i, from, from.rest(rest));
            }
        }
    }

    private void add(int index, Board from, int rest) {
        if (rests == node.length) {
            grow();
        }
        board[rests] = index;
        node[rests] = rest;
        length[rests] = from.length(rest);
        width[rests] = from.width(rest);
        mating[rests] = terms.kind(from.kind()).mating();
        worth[rests] = terms.values.of(length[rests], width[rests]);
        stages[rests] = terms.restricted ? from.stages(rest) : 0;
        rests++;
    }

    private void grow() {
        int more = 2 * rests;
        board = Arrays.copyOf(board, more);
        node = Arrays.copyOf(node, more);
        length = Arrays.copyOf(length, more);
        width = Arrays.copyOf(width, more);
        mating = Arrays.copyOf(mating, more);
        worth = Arrays.copyOf(worth, more);
        stages = Arrays.copyOf(stages, more);
    }

    private void gatherTypes() {
        waiting = 0;
        for (int type = 0; type < terms.types(); type++) {
            if (layout.missing(type) > 0) {
                types[waiting] = type;
                places[waiting] = count(type);
                waiting++;
            }
        }
    }

    private void drop(int place) {
        waiting--;
        types[place] = types[waiting];
        places[place] = places[waiting];
    }

    private int count(int type) {
        int found = 0;
        for (int i = 0; i < rests; i++) {
            found += ways(type, i);
        }
        return found;
    }

    /** In how many positions a piece of the type fits into a rest: 0, 1 or 2. */
    private int ways(int type, int rest) {
        int along = terms.length[type];
        int across = terms.width[type];
        int found = 0;
        if (terms.straight[type] && along <= length[rest] && across <= width[rest]) {
            found++;
        }
        if (terms.turned[type] && across <= length[rest] && along <= width[rest]) {
            found++;
        }
        return mating[rest] || !terms.mating[type] ? found : 0;
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
        for (int kind = 0; kind < terms.tally.kinds(); kind++) {
            if (layout.affords(kind, limit) && terms.starts(type, kind) && dice.oneIn(++choices)) {
                chosen = kind;
            }
        }
        if (chosen < 0) {
            return false;
        }
        layout.add(Board.whole(terms, chosen, layout.owner()));
        int index = layout.count() - 1;
        var begun = layout.board(index);
        add(index, begun, begun.rest(0));
        countNew(rests - 1);
        return true;
    }

    private void countNew(int rest) {
        for (int i = 0; i < waiting; i++) {
            places[i] += ways(types[i], rest);
        }
    }

    private boolean insertCheapest(int type) {
        if (!findCheapest(type)) {
            for (int i = 0; i < waiting; i++) {
                if (types[i] == type) {
                    places[i] = 0;
                }
            }
            return false;
        }
        int rest = cheapestRest;
        var target = layout.own(board[rest]);
        int along = cheapestTurned ? terms.width[type] : terms.length[type];
        int across = cheapestTurned ? terms.length[type] : terms.width[type];
        int index = board[rest];
        int before = target.restCount();
        target.insert(node[rest], type, along, across, cheapestRipFirst);
        layout.place(type);
        take(rest);
        for (int i = before - 1; i < target.restCount(); i++) {
            add(index, target, target.rest(i));
            countNew(rests - 1);
        }
        return true;
    }

    private void take(int rest) {
        for (int i = 0; i < waiting; i++) {
            places[i] -= ways(types[i], rest);
        }
        rests--;
        board[rest] = board[rests];
        node[rest] = node[rests];
        length[rest] = length[rests];
        width[rest] = width[rests];
        mating[rest] = mating[rests];
        worth[rest] = worth[rests];
        stages[rest] = stages[rests];
    }

    private boolean findCheapest(int type) {
        cheapest = Double.POSITIVE_INFINITY;
        int a = terms.length[type];
        int b = terms.width[type];
        boolean straight = terms.straight[type];
        boolean turned = terms.turned[type];
        for (int i = 0; i < rests; i++) {
            if (terms.mating[type] && !mating[i]) {
                continue;
            }
            if (straight && a <= length[i] && b <= width[i]) {
                offer(i, a, b, false);
            }
            if (turned && b <= length[i] && a <= width[i]) {
                offer(i, b, a, true);
            }
        }
        return cheapest < Double.POSITIVE_INFINITY;
    }

    private void offer(int rest, int along, int across, boolean turned) {
        int restLength = length[rest];
        int restWidth = width[rest];
        if (terms.cuts(stages[rest], restLength, restWidth, along, across, true)) {
            int beside = terms.rules.left(Direction.RIP, restLength, restWidth - across);
            int end = terms.rules.left(Direction.CROSSCUT, across, restLength - along);
            offer(rest, turned, true, terms.values.of(restLength, beside), terms.values.of(end, across));
        }
        if (terms.cuts(stages[rest], restLength, restWidth, along, across, false)) {
            int beside = terms.rules.left(Direction.CROSSCUT, restWidth, restLength - along);
            int end = terms.rules.left(Direction.RIP, along, restWidth - across);
            offer(rest, turned, false, terms.values.of(beside, restWidth), terms.values.of(along, end));
        }
    }

    private void offer(int rest, boolean turned, boolean ripFirst, double beside, double end) {
        double cost = worth[rest] - beside - end;
        if (cost < cheapest && !(overlooks && dice.overlooks())) {
            cheapest = cost;
            cheapestRest = rest;
            cheapestTurned = turned;
            cheapestRipFirst = ripFirst;
        }
    }
}
