package org.standwright.advice;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Changes of one kind, the smallest first: steps that a maker would try, and every mark of the tape up to the largest.
 *
 * @param fine none where there is nothing between the steps
 */
record Line(List<? extends Change> steps, List<? extends Change> fine) {
    /** Steps of each line that are tried together with those of others. */
    private static final int FEW = 4;

    Line {
        steps = List.copyOf(steps);
        fine = List.copyOf(fine);
    }

    /** Steps with nothing between them. */
    static Line of(List<? extends Change> steps) {
        return new Line(steps, List.of());
    }

    /** Some of the steps, evenly spread, the largest among them. */
    Line few() {
        int count = Math.min(FEW, steps.size());
        return new Line(
                IntStream.rangeClosed(1, count)
                        .mapToObj(i -> steps.get(i * steps.size() / count - 1))
                        .toList(),
                fine);
    }

    /** What is smaller than a step, but larger than the step before it. */
    List<? extends Change> before(int step) {
        double from = step == 0 ? 0 : steps.get(step - 1).size();
        double to = steps.get(step).size();
        return fine.stream()
                .filter(change -> change.size() > from && change.size() < to)
                .toList();
    }
}
