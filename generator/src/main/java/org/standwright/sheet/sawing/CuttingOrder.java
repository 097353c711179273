package org.standwright.sheet.sawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.standwright.sheet.Cut.Tool;

/**
 * The order in which a person makes the cuts of all boards. What waits comes last; before that, break-down cuts come
 * as early as their panels exist. Otherwise the saw keeps its setting as long as any panel there is can use it. The
 * next setting is one that need never come back, if there is one, else the one that makes most cuts at once; of equal
 * ones the larger.
 */
final class CuttingOrder {
    private static final Comparator<Step.Setting> LARGEST = Comparator.comparingInt(Step.Setting::setting)
            .reversed()
            .thenComparing(Step.Setting::direction)
            .thenComparing(Step.Setting::tool);

    private final List<Step> steps;
    private final List<List<Integer>> after;
    private final boolean[] leadsToBreakDown;
    /** How many cuts the setting of each step makes of its panel, one after the other. */
    private final int[] atOnce;

    /** By setting, what can be made now, and what is still to make of this stage. */
    private final TreeMap<Step.Setting, TreeSet<Integer>> open = new TreeMap<>(LARGEST);

    private final Map<Step.Setting, Integer> toMake = new HashMap<>();
    private final List<Integer> order = new ArrayList<>();

    private CuttingOrder(List<Step> steps) {
        this.steps = steps;
        this.after = steps.stream()
                .map(step -> (List<Integer>) new ArrayList<Integer>())
                .toList();
        this.leadsToBreakDown = new boolean[steps.size()];
        this.atOnce = new int[steps.size()];
        // a step comes after the one that makes its panel
        for (int i = steps.size() - 1; i >= 0; i--) {
            var step = steps.get(i);
            leadsToBreakDown[i] |= step.tool() == Tool.BREAK_DOWN_SAW;
            atOnce[i]++;
            if (step.before() != Step.NONE) {
                tell(step.before(), i);
            }
        }
    }

    private void tell(int before, int step) {
        after.get(before).add(0, step);
        if (steps.get(step).waits() == steps.get(before).waits()) {
            leadsToBreakDown[before] |= leadsToBreakDown[step];
            if (steps.get(step).fence().equals(steps.get(before).fence())) {
                atOnce[before] += atOnce[step];
            }
        }
    }

    /** Indices of the steps in the order in which they are made. */
    static List<Integer> of(List<Step> steps) {
        var order = new CuttingOrder(steps);
        order.make(false);
        order.make(true);
        return order.order;
    }

    private void make(boolean waiting) {
        toMake.clear();
        var made = new TreeSet<>(order);
        IntStream.range(0, steps.size())
                .filter(i -> steps.get(i).waits() == waiting)
                .peek(i -> toMake.merge(steps.get(i).fence(), 1, Integer::sum))
                .filter(i -> steps.get(i).before() == Step.NONE
                        || made.contains(steps.get(i).before()))
                .forEach(this::open);
        while (!open.isEmpty()) {
            makeAll(next(), waiting);
        }
    }

    private void open(int step) {
        open.computeIfAbsent(steps.get(step).fence(), none -> new TreeSet<>()).add(step);
    }

    private void makeAll(Step.Setting setting, boolean waiting) {
        for (var now = open.remove(setting); now != null; now = open.remove(setting)) {
            for (int step : now) {
                order.add(step);
                after.get(step).stream()
                        .filter(next -> steps.get(next).waits() == waiting)
                        .forEach(this::open);
            }
            toMake.merge(setting, -now.size(), Integer::sum);
        }
    }

    private Step.Setting next() {
        int urgent = open.values().stream().mapToInt(this::rank).min().orElseThrow();
        var best = open.firstKey();
        int most = 0;
        for (var entry : open.entrySet()) {
            if (rank(entry.getValue()) == urgent) {
                int now =
                        entry.getValue().stream().mapToInt(step -> atOnce[step]).sum();
                int worth = now == toMake.get(entry.getKey()) ? now + steps.size() : now;
                if (worth > most) {
                    most = worth;
                    best = entry.getKey();
                }
            }
        }
        return best;
    }

    private int rank(TreeSet<Integer> open) {
        return open.stream().mapToInt(this::rank).min().orElseThrow();
    }

    private int rank(int step) {
        if (steps.get(step).tool() == Tool.BREAK_DOWN_SAW) {
            return 0;
        }
        return leadsToBreakDown[step] ? 1 : 2;
    }
}
