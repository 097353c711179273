package org.standwright.design.wall.place;

import java.util.HashMap;
import java.util.Map;

/**
 * Makes hung holders cost less. The worst change places with others; after that each, the worst first, is taken off and hung
 * anew where it costs least now, if a row has got room for it since it was last tried, until nothing gets better. The sum of
 * what all cost never rises, and none loses its place.
 */
final class Settling {
    /** A gain of less is none. */
    static final double LEAST = 1;

    private static final int ROUNDS = 3;

    private final Search search;
    private final Layout layout;

    /** By the holder's place in the design, how many had moved when it was last tried. */
    private final Map<Integer, Integer> tried = new HashMap<>();

    Settling(Search search, Layout layout) {
        this.search = search;
        this.layout = layout;
    }

    void settle() {
        var exchange = new Exchange(search, layout);
        renewAll();
        for (int round = 0; round < ROUNDS && exchange.worst(); round++) {
            renewAll();
        }
    }

    private void renewAll() {
        boolean isBetter = true;
        for (int round = 0; round < ROUNDS && isBetter; round++) {
            isBetter = false;
            for (var hung : layout.worstFirst()) {
                isBetter |= renew(hung);
            }
        }
    }

    /** Only on rows that have got more room since it was last tried. */
    private boolean renew(Hung hung) {
        var holder = hung.holder();
        double limit = hung.place().cost() - LEAST;
        int since = tried.getOrDefault(hung.at(), 0);
        tried.put(hung.at(), layout.board().moves());
        var rows = search.rows(holder).stream().takeWhile(row -> row.cost() < limit);
        if (rows.noneMatch(row -> layout.board().isLooser(row, since))) {
            return false;
        }
        layout.takeOff(hung);
        var now = search.again(holder, hung.place(), layout.board());
        var better = search.below(
                        now.total() - LEAST,
                        holder,
                        layout.board(),
                        row -> row.cost() < limit && layout.board().isLooser(row, since))
                .filter(place -> place.cost() < limit);
        layout.hang(hung);
        better.ifPresent(place -> layout.move(hung, place));
        return better.isPresent();
    }
}
