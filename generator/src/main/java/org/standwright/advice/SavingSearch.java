package org.standwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standwright.cutlist.CutList;
import org.standwright.design.built.Stand;
import org.standwright.sheet.SheetPlan;

/**
 * Looks for changes that save a sheet or money, each kind alone first, from the smallest step on: a step that saves is
 * made smaller mark by mark, and larger ones are reported where they save more. Only where no change does it alone, two
 * are tried together. What was found by quick plans is planned again as it would be made.
 */
public final class SavingSearch {
    /** Changed designs that are looked at, at most. */
    private static final int MOST = 2000;

    private final Trial before;
    private final Trials trials;
    private final List<Found> found = new ArrayList<>();

    private SavingSearch(Trial before) {
        this.before = before;
        this.trials = new Trials(before);
    }

    private record Found(List<Change> changes, Trial trial) {}

    /**
     * Advice on a stand whose design says what may change, empty for any other.
     *
     * @param cutList of the stand
     * @param plan of the cut list, as it is made
     */
    public static Optional<Advice> of(Stand stand, CutList cutList, SheetPlan plan) {
        return stand.design().savings().map(savings -> {
            var allowed = new Allowed(stand.design(), savings);
            return new SavingSearch(new Trial(stand, cutList, plan)).advice(allowed);
        });
    }

    private Advice advice(Allowed allowed) {
        var lines = allowed.lines();
        if (before.cost().sheets() > 0) {
            lines.forEach(this::alone);
            if (found.isEmpty()) {
                together(lines.stream().map(Line::few).toList());
            }
        }
        var savings = found.stream()
                .flatMap(one -> saving(one).stream())
                .sorted(Comparator.comparing(this::savesASheet)
                        .reversed()
                        .thenComparing(this::rank)
                        .thenComparing(saving -> saving.after().over(before.cost()))
                        .thenComparing(Saving::size))
                .toList();
        return new Advice(before.cost(), savings, trials.tried(), allowed.unused());
    }

    private boolean savesASheet(Saving saving) {
        return saving.after().sheets() < before.cost().sheets();
    }

    /** Sheets are saved by the smallest change first, money by the largest amount first. */
    private double rank(Saving saving) {
        return savesASheet(saving) ? saving.size() : 0;
    }

    private Optional<Saving> saving(Found one) {
        return trials.confirmed(one.trial())
                .map(trial -> new Saving(
                        one.changes(),
                        trial.stand().design(),
                        trial.cost(),
                        Differences.between(before.stand(), trial.stand(), trials)));
    }

    private void alone(Line line) {
        var best = before.cost();
        for (int step = 0; step < line.steps().size(); step++) {
            var whole = List.<Change>of(line.steps().get(step));
            var saves = cheaper(whole, best);
            if (saves.isPresent()) {
                best = between(line.before(step), best);
                if (saves.get().cost().isLessThan(best)) {
                    found.add(new Found(whole, saves.get()));
                    best = saves.get().cost();
                }
            }
        }
    }

    /** Notes each change that saves more than those before it; returns what the last of them costs. */
    private Cost between(List<? extends Change> changes, Cost from) {
        var best = from;
        for (var change : changes) {
            var saves = cheaper(List.of(change), best);
            if (saves.isPresent()) {
                found.add(new Found(List.of(change), saves.get()));
                best = saves.get().cost();
            }
        }
        return best;
    }

    /** The first of some changes, with others beside it, that costs less. */
    private Optional<Found> smallest(List<? extends Change> changes, List<Change> others, Cost than) {
        for (var change : changes) {
            var all = new ArrayList<Change>(List.of(change));
            all.addAll(others);
            var saves = cheaper(all, than);
            if (saves.isPresent()) {
                return Optional.of(new Found(all, saves.get()));
            }
        }
        return Optional.empty();
    }

    private void together(List<Line> lines) {
        var pairs = new ArrayList<Pair>();
        for (int first = 0; first < lines.size(); first++) {
            for (int second = first + 1; second < lines.size(); second++) {
                pairs.addAll(Pair.of(lines.get(first), lines.get(second)));
            }
        }
        pairs.sort(Comparator.comparingDouble(Pair::size));
        var done = new ArrayList<Pair>();
        for (var pair : pairs) {
            if (done.stream().noneMatch(pair::isOfTheSameKinds)) {
                var saves = cheaper(pair.changes(), before.cost());
                if (saves.isPresent()) {
                    done.add(pair);
                    found.add(smaller(pair, new Found(pair.changes(), saves.get())));
                }
            }
        }
    }

    /** The first change of a pair made as small as it can be, then the second. */
    private Found smaller(Pair pair, Found saves) {
        var than = before.cost();
        var first = smallest(pair.firsts(), saves.changes().subList(1, 2), than).orElse(saves);
        return smallest(pair.seconds(), first.changes().subList(0, 1), than)
                .map(both ->
                        new Found(List.of(both.changes().get(1), both.changes().get(0)), both.trial()))
                .orElse(first);
    }

    private Optional<Trial> cheaper(List<Change> changes, Cost than) {
        if (trials.tried() >= MOST) {
            return Optional.empty();
        }
        var design = before.stand().design();
        for (var change : changes) {
            design = change.in(design);
        }
        return trials.cheaper(design, than);
    }
}
