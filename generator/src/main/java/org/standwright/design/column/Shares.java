package org.standwright.design.column;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shares a height: each thing takes its shares of it; what would be lower than its least or higher than its most stays
 * there, and the rest is shared again.
 */
final class Shares {
    private final List<Slot> slots;
    private final double[] heights;

    private Shares(List<Slot> slots) {
        this.slots = slots;
        this.heights = new double[slots.size()];
    }

    /**
     * Heights in the order of the slots, mm. They add up to {@code height} wherever least and most allow it.
     *
     * @param step to which heights are rounded down, 0 for none; what remains goes to the lowest that can take it
     */
    static double[] of(List<Slot> slots, double height, double step) {
        var shares = new Shares(slots);
        shares.share(height);
        if (step > 0) {
            shares.round(step);
        }
        return shares.heights;
    }

    private void share(double height) {
        var open = new ArrayList<>(IntStream.range(0, heights.length).boxed().toList());
        while (!open.isEmpty()) {
            double settled = 0;
            double sum = 0;
            for (int i = 0; i < heights.length; i++) {
                settled += open.contains(i) ? 0 : heights[i];
                sum += open.contains(i) ? slots.get(i).shares() : 0;
            }
            double one = (height - settled) / sum;
            double clamped = 0;
            for (int i : open) {
                double wanted = one * slots.get(i).shares();
                heights[i] = slots.get(i).within(wanted);
                clamped += heights[i] - wanted;
            }
            // those that leave the others less come first, unless the others gain
            boolean raised = clamped > 0;
            if (!open.removeIf(i -> isHeld(i, one, raised))) {
                return;
            }
        }
    }

    private boolean isHeld(int i, double one, boolean raised) {
        double wanted = one * slots.get(i).shares();
        return raised ? heights[i] > wanted : heights[i] < wanted;
    }

    private void round(double step) {
        double over = 0;
        for (int i = 0; i < heights.length; i++) {
            var slot = slots.get(i);
            if (heights[i] > slot.least() && heights[i] < slot.most()) {
                double rounded = Math.max(slot.least(), StrictMath.floor(heights[i] / step + 1e-9) * step);
                over += heights[i] - rounded;
                heights[i] = rounded;
            }
        }
        for (int i = heights.length - 1; i >= 0 && over > 0; i--) {
            double takes = Math.min(over, slots.get(i).most() - heights[i]);
            if (takes > 0) {
                heights[i] += takes;
                over -= takes;
            }
        }
    }
}
