package org.standwright.design.wall.row;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;

/**
 * The strips that cover most of one run of bare wall; of those that cover as much the fewest, of these the ones with most
 * of one length, then with most of lengths that rows below have, so that few lengths are sawn. Exact: it compares all ways to share the studs out, by the best way up to each.
 */
final class RunPlanner {
    private final List<Double> studs;
    private final Overhang overhang;
    private final double longest;
    private final Interval run;
    private final Set<Integer> barred;
    private final List<Double> lengthsBelow;
    private final List<Integer> usable;

    /**
     * @param studs that take screws, all of the wall
     * @param longest length of a strip, mm
     * @param barred bays without a joint; bay i is that between stud i and stud i + 1, from 0
     * @param lengthsBelow of strips in rows below, mm
     */
    RunPlanner(List<Double> studs, double longest, Interval run, Set<Integer> barred, List<Double> lengthsBelow) {
        this.studs = studs;
        this.overhang = new Overhang(studs);
        this.longest = longest;
        this.run = run;
        this.barred = barred;
        this.lengthsBelow = lengthsBelow;
        this.usable = IntStream.range(0, studs.size())
                .filter(i -> !Grid.less(studs.get(i) - run.from(), Overhang.LEAST)
                        && !Grid.less(run.to() - studs.get(i), Overhang.LEAST))
                .boxed()
                .toList();
    }

    /** How many studs the run holds far enough from its ends. */
    int studs() {
        return usable.size();
    }

    List<Span> best() {
        var all = all();
        var best = best(all, 0);
        if (best.spans().size() > 1) {
            for (double length : lengths(all)) {
                var other = best(all, length);
                best = better(best, other);
            }
        }
        return best.spans();
    }

    /** Bays that a row's strips leave open between them. */
    static Set<Integer> joints(List<Span> spans) {
        var bays = new TreeSet<Integer>();
        for (int i = 1; i < spans.size(); i++) {
            for (int bay = spans.get(i - 1).last(); bay < spans.get(i).first(); bay++) {
                bays.add(bay);
            }
        }
        return bays;
    }

    /** Every strip that can be, by its last stud and then by its first. */
    private List<List<Span>> all() {
        return usable.stream()
                .map(last -> usable.stream()
                        .filter(first -> first < last)
                        .flatMap(first -> span(first, last).stream())
                        .toList())
                .toList();
    }

    private Optional<Span> span(int first, int last) {
        double between = studs.get(last) - studs.get(first);
        double left = Math.min(overhang.most(first, first + 1), studs.get(first) - run.from());
        double right = Math.min(overhang.most(last, last - 1), run.to() - studs.get(last));
        if (Grid.less(longest, between + left + right)) {
            right = Math.max(Overhang.LEAST, longest - between - left);
            left = longest - between - right;
        }
        return Grid.less(left, Overhang.LEAST)
                ? Optional.empty()
                : Optional.of(new Span(first, last, new Interval(studs.get(first) - left, studs.get(last) + right)));
    }

    private static List<Double> lengths(List<List<Span>> all) {
        var lengths = new ArrayList<Double>();
        all.stream()
                .flatMap(List::stream)
                .map(span -> span.along().length())
                .sorted(Comparator.reverseOrder())
                .forEach(length -> {
                    if (lengths.isEmpty() || !Grid.same(lengths.get(lengths.size() - 1), length)) {
                        lengths.add(length);
                    }
                });
        return lengths;
    }

    /** Best chain of all, with as many strips of the wished length as a best one can have. */
    private Chain best(List<List<Span>> all, double wished) {
        var best = Chain.NONE;
        // by stud: the best chain that a strip starting there may follow, with a joint in the bays between
        var before = new ArrayList<Chain>();
        var ending = Chain.NONE;
        for (int i = 0; i < all.size(); i++) {
            int last = usable.get(i);
            before.add(i == 0 || barred.contains(last - 1) ? Chain.NONE : better(before.get(i - 1), ending));
            ending = Chain.NONE;
            for (var span : all.get(i)) {
                var followed = before.get(span.first() - usable.get(0));
                ending = better(ending, followed.with(span, wished, lengthsBelow));
            }
            best = better(best, ending);
        }
        return best;
    }

    private static Chain better(Chain first, Chain second) {
        return second.beats(first) ? second : first;
    }
}
