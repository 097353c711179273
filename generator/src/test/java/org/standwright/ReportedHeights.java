package org.standwright;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Heights of the fronts and openings of one bay, worked out again: given ones as given; the others have one unit u, each
 * its ratio of it within its least and most, such that all of them fill the bay; rounded down to a step, and what
 * remains goes to the lowest that may take it. Here u is searched by halving.
 */
final class ReportedHeights {
    private final Report report;

    ReportedHeights(Report report) {
        this.report = report;
    }

    /** What one section holds, and the heights of its fronts or of its one opening, from top to bottom. */
    record Heights(List<Entry> contents, boolean hasFronts, List<Double> each) {
        double sum() {
            return each.stream().mapToDouble(Double::doubleValue).sum();
        }
    }

    List<Heights> of(Entry bay, double opening, Panels panels) {
        var slots = new ReportedSlots(report, bay, panels);
        double left = opening - slots.between();
        var standing = filled(slots.slots(), left);
        left -= (standing.size() - slots.slots().size()) * report.gap();
        var heights = rounded(standing, shared(standing, left));
        double rest = left - DoubleStream.of(heights).sum();
        if (Math.abs(rest) <= report.tape() + 1e-6) {
            heights[heights.length - 1] += rest;
        }
        return IntStream.range(0, slots.sections().size())
                .mapToObj(section -> new Heights(
                        slots.sections().get(section),
                        slots.hasFronts(section),
                        IntStream.range(0, heights.length)
                                .filter(i -> standing.get(i).section() == section)
                                .mapToObj(i -> heights[i])
                                .toList()))
                .toList();
    }

    /** As many as go into what the others leave, the lowest as high as what then remains. */
    private List<ReportedSlots.Slot> filled(List<ReportedSlots.Slot> slots, double left) {
        double gap = report.gap();
        var standing = new ArrayList<ReportedSlots.Slot>();
        for (var slot : slots) {
            if (slot.fill().isEmpty()) {
                standing.add(slot);
                continue;
            }
            double front = slot.fill().getAsDouble();
            double others = slots.stream()
                    .filter(other -> other != slot)
                    .mapToDouble(ReportedSlots.Slot::least)
                    .sum();
            double room = left - others;
            while (room >= 2 * front + gap - 1e-6) {
                standing.add(ReportedSlots.Slot.given(slot.section(), front));
                room -= front + gap;
            }
            standing.add(ReportedSlots.Slot.given(slot.section(), room));
        }
        return standing;
    }

    private static double[] shared(List<ReportedSlots.Slot> slots, double left) {
        double low = 0;
        double high = 1e6;
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            if (DoubleStream.of(at(middle, slots)).sum() < left) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return at((low + high) / 2, slots);
    }

    private static double[] at(double unit, List<ReportedSlots.Slot> slots) {
        return slots.stream()
                .mapToDouble(slot -> Math.max(slot.least(), Math.min(slot.most(), unit * slot.ratio())))
                .toArray();
    }

    private double[] rounded(List<ReportedSlots.Slot> slots, double[] exact) {
        double step = report.entry().number("/design/rounding", report.tape());
        if (step == 0) {
            return exact;
        }
        var heights = exact.clone();
        double over = 0;
        for (int i = 0; i < heights.length; i++) {
            var slot = slots.get(i);
            if (heights[i] > slot.least() && heights[i] < slot.most()) {
                heights[i] = Math.max(slot.least(), Math.floor(exact[i] / step + 1e-9) * step);
                over += exact[i] - heights[i];
            }
        }
        for (int i = heights.length - 1; i >= 0; i--) {
            double takes = Math.min(over, slots.get(i).most() - heights[i]);
            heights[i] += Math.max(0, takes);
            over -= Math.max(0, takes);
        }
        return heights;
    }
}
