package org.standwright;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Everything in one bay that has a height, from top to bottom, with the least and the most of each, mm. */
final class ReportedSlots {
    private static final double ANY = Double.POSITIVE_INFINITY;

    private final Report report;
    private final Panels panels;
    private final ReportedLeast least;
    private final ReportedReach reach;
    private final List<List<Entry>> sections;
    private final List<Slot> slots = new ArrayList<>();

    ReportedSlots(Report report, Entry bay, Panels panels) {
        this.report = report;
        this.panels = panels;
        this.least = new ReportedLeast(report);
        this.reach = new ReportedReach(report);
        this.sections = sections(bay.list("/contents"));
        IntStream.range(0, sections.size()).forEach(this::section);
    }

    /**
     * A front, or an opening without one.
     *
     * @param fill height of the fronts that fill what is left
     */
    record Slot(int section, double ratio, double least, double most, OptionalDouble fill) {
        static Slot given(int section, double height) {
            return new Slot(section, 1, height, height, OptionalDouble.empty());
        }
    }

    List<Slot> slots() {
        return slots;
    }

    /** Drawers that follow each other share one opening. */
    List<List<Entry>> sections() {
        return sections;
    }

    boolean hasFronts(int section) {
        return fronts(sections.get(section)) > 0;
    }

    /** All of the bay's height that is not a slot: panels and gaps, less what fronts reach over panels. */
    double between() {
        double between = (sections.size() - 1) * report.panel();
        for (int section = 0; section < sections.size(); section++) {
            if (hasFronts(section)) {
                var gaps = (fronts(sections.get(section)) - 1) * report.gap();
                between += reach.openingBehind(gaps, here(section));
            }
        }
        return between;
    }

    double leastOpening() {
        return between() + slots.stream().mapToDouble(Slot::least).sum();
    }

    double mostOpening() {
        return between() + slots.stream().mapToDouble(Slot::most).sum();
    }

    private Panels here(int section) {
        return panels.down(section, sections.size());
    }

    private static List<List<Entry>> sections(List<Entry> contents) {
        var sections = new ArrayList<List<Entry>>();
        boolean open = false;
        for (var content : contents) {
            boolean drawers = content.kind().endsWith("drawers");
            if (!open || !drawers) {
                sections.add(new ArrayList<>());
            }
            sections.get(sections.size() - 1).add(content);
            open = drawers;
        }
        return sections;
    }

    private static int fronts(List<Entry> section) {
        return section.stream().mapToInt(ReportedSlots::fronts).sum();
    }

    private static int fronts(Entry content) {
        return switch (content.kind()) {
            case "drawers" -> content.list("/fronts").size();
            case "equal-drawers", "graduated-drawers" -> (int) content.number("/count");
            case "filled-drawers", "door" -> 1;
            default -> 0;
        };
    }

    private void section(int section) {
        int from = 0;
        for (var content : sections.get(section)) {
            if (content.kind().endsWith("drawers")) {
                drawers(section, content, from);
                from += fronts(content);
            } else if (content.has("/height")) {
                slots.add(Slot.given(section, content.number("/height")));
            } else {
                slots.add(opening(section, content));
            }
        }
    }

    private Slot opening(int section, Entry content) {
        if (!content.kind().equals("divided")) {
            return new Slot(section, 1, least.opening(content, here(section)), ANY, OptionalDouble.empty());
        }
        var bays = report.asBuilt(content.list("/bays"));
        double low = 0;
        double high = ANY;
        for (int i = 0; i < bays.size(); i++) {
            var inner = new ReportedSlots(report, bays.get(i), here(section).across(i, bays.size()));
            low = Math.max(low, inner.leastOpening());
            high = Math.min(high, inner.mostOpening());
        }
        return new Slot(section, 1, low, Math.max(low, high), OptionalDouble.empty());
    }

    private void drawers(int section, Entry content, int from) {
        switch (content.kind()) {
            case "drawers" -> content.numbers("/fronts").forEach(height -> slots.add(Slot.given(section, height)));
            case "filled-drawers" -> {
                double front = content.number("/front");
                double low = Math.max(front, leastFront(section, from));
                slots.add(new Slot(section, 1, low, ANY, OptionalDouble.of(front)));
            }
            case "equal-drawers" -> series(section, content, 1, leastEqual());
            default -> {
                double ratio = content.number("/ratio");
                double unit = IntStream.range(0, fronts(content))
                        .mapToDouble(i -> leastFront(section, from + i) / Math.pow(ratio, i))
                        .max()
                        .orElseThrow();
                series(section, content, ratio, unit);
            }
        }
    }

    /** Fronts each {@code ratio} times as high as the one above it. */
    private void series(int section, Entry content, double ratio, double unit) {
        double most = content.number("/most", ANY);
        for (int i = 0; i < fronts(content); i++) {
            double here = Math.pow(ratio, i);
            double low = Math.max(Math.min(unit * here, most), content.number("/least", 0));
            slots.add(new Slot(section, here, low, most, OptionalDouble.empty()));
        }
    }

    private double leastFront(int section, int place) {
        return least.front(place, fronts(sections.get(section)), here(section));
    }

    /** Equal drawers of a bay are equal in all its sections, so the one that needs most decides. */
    private double leastEqual() {
        double most = 0;
        for (int section = 0; section < sections.size(); section++) {
            int place = 0;
            for (var content : sections.get(section)) {
                for (int i = 0; i < fronts(content); i++, place++) {
                    if (content.kind().equals("equal-drawers")) {
                        most = Math.max(most, leastFront(section, place));
                    }
                }
            }
        }
        return most;
    }
}
