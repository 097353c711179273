package org.standwright.sheet.search;

import static java.util.Comparator.comparingInt;
import static java.util.Comparator.comparingLong;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.lane.Dice;
import org.standwright.sheet.lane.Layout;

/** The first answer: largest pieces first, each where it costs least, by several notions of large; the best counts. */
final class FirstLayout {
    private static final List<Comparator<PieceType>> SMALL_FIRST = List.of(
            comparingLong(PieceType::area),
            comparingInt((PieceType type) -> Math.max(type.length(), type.width())),
            comparingInt((PieceType type) -> Math.min(type.length(), type.width())),
            comparingInt(type -> type.length() + type.width()),
            comparingInt(PieceType::length),
            comparingInt(PieceType::width));

    private final Terms terms;
    private final Recreation recreation;

    private FirstLayout(Terms terms) {
        this.terms = terms;
        this.recreation = new Recreation(terms, new Dice(0), false);
    }

    static Layout<Board> of(Terms terms) {
        var first = new FirstLayout(terms);
        return SMALL_FIRST.stream()
                .map(order -> first.inOrder(order.thenComparing(PieceType::area).reversed()))
                .reduce((best, next) -> isBetter(next, best) ? next : best)
                .orElseThrow();
    }

    private Layout<Board> inOrder(Comparator<PieceType> order) {
        var layout = Layout.<Board>empty(terms.tally);
        IntStream.range(0, terms.types())
                .boxed()
                .sorted((a, b) -> order.compare(
                        terms.job.types().get(a), terms.job.types().get(b)))
                .forEach(type -> recreation.place(layout, type, Long.MAX_VALUE));
        return layout;
    }

    private static boolean isBetter(Layout<Board> a, Layout<Board> b) {
        long missingA = a.missingArea();
        long missingB = b.missingArea();
        if (missingA != missingB) {
            return missingA < missingB;
        }
        return a.cost() != b.cost() ? a.cost() < b.cost() : a.restValue() > b.restValue();
    }
}
