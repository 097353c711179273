package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Lets one of the worst holders have a better place that another is in the way of, where the other finds a place that
 * makes both cost less together.
 */
final class Exchange {
    /** How many of the worst are tried. */
    private static final int WORST = 16;

    /** With how many others each of them changes places, at most: those first that would help it most. */
    private static final int OTHERS = 4;

    private final Search search;
    private final Layout layout;

    Exchange(Search search, Layout layout) {
        this.search = search;
        this.layout = layout;
    }

    /** Whether any change was made. */
    boolean worst() {
        boolean isBetter = false;
        var order = Comparator.comparingDouble(this::awry).reversed().thenComparingInt(Hung::at);
        for (var one : layout.all().stream().sorted(order).limit(WORST).toList()) {
            isBetter |= better(layout.hung(one.at()));
        }
        return isBetter;
    }

    /** What one costs more than at the best height. */
    private double awry(Hung one) {
        return one.place().cost() - search.rows(one.holder()).get(0).cost();
    }

    /** A place that one would take if another left its own. */
    private record Wish(Hung other, Place place, double gain) {}

    private boolean better(Hung one) {
        for (var wish : wishes(one)) {
            var elsewhere = elsewhere(one, wish);
            if (elsewhere.isPresent()) {
                layout.move(wish.other, elsewhere.get());
                layout.move(one, wish.place);
                return true;
            }
        }
        return false;
    }

    private List<Wish> wishes(Hung one) {
        layout.takeOff(one);
        var wishes = new ArrayList<Wish>();
        double limit = one.place().cost() - Settling.LEAST;
        for (var row : search.rows(one.holder())) {
            if (row.cost() >= limit) {
                break;
            }
            layout.board()
                    .vacated(one.holder(), row)
                    .forEach(vacated -> search.best(one.holder(), row, vacated.places())
                            .filter(place -> place.cost() < limit)
                            .map(place -> new Wish(vacated.by(), place, gain(one, vacated.by(), place)))
                            .filter(wish -> wish.gain > Settling.LEAST)
                            .ifPresent(wishes::add));
        }
        layout.hang(one);
        wishes.sort(Comparator.comparingDouble(Wish::gain).reversed());
        return wishes.subList(0, Math.min(OTHERS, wishes.size()));
    }

    /** At most, if the other went to its best height. */
    private double gain(Hung one, Hung other, Place place) {
        return one.place().cost() - place.cost() + awry(other);
    }

    /** Where the other would go, if that is worth it. */
    private Optional<Place> elsewhere(Hung one, Wish wish) {
        var moved = one.at(wish.place);
        var other = wish.other;
        double limit = one.place().cost() + other.place().cost() - wish.place.cost() - Settling.LEAST;
        layout.takeOff(one);
        layout.takeOff(other);
        layout.hang(moved);
        var elsewhere = search.below(limit, other.holder(), layout.board(), row -> true);
        layout.takeOff(moved);
        layout.hang(one);
        layout.hang(other);
        return elsewhere;
    }
}
