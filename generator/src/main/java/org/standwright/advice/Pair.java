package org.standwright.advice;

import java.util.ArrayList;
import java.util.List;

/** A step of one line of changes together with a step of another. */
record Pair(Line first, int firstStep, Line second, int secondStep) {
    /** Every step of one with every step of the other. */
    static List<Pair> of(Line first, Line second) {
        var pairs = new ArrayList<Pair>();
        for (int i = 0; i < first.steps().size(); i++) {
            for (int j = 0; j < second.steps().size(); j++) {
                pairs.add(new Pair(first, i, second, j));
            }
        }
        return pairs;
    }

    List<Change> changes() {
        return List.of(first.steps().get(firstStep), second.steps().get(secondStep));
    }

    double size() {
        return changes().stream().mapToDouble(Change::size).sum();
    }

    boolean isOfTheSameKinds(Pair other) {
        return first.equals(other.first) && second.equals(other.second);
    }

    /** What is smaller than the first change, down to the step before it. */
    List<? extends Change> firsts() {
        return first.before(firstStep);
    }

    List<? extends Change> seconds() {
        return second.before(secondStep);
    }
}
