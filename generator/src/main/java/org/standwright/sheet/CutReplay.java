package org.standwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.kit.Keep;
import org.standwright.sheet.Cut.Direction;

/** Saws a trimmed board by its list of cuts and compares what lies on the bench in the end. */
final class CutReplay {
    private final int kerf;
    private final Keep keep;
    private final List<Area> panels = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private long sawdust;
    private long waste;

    CutReplay(Area trimmed, int kerf, Keep keep) {
        this.keep = keep;
        this.kerf = kerf;
        panels.add(trimmed);
    }

    List<String> faults(PlannedSheet sheet) {
        int number = 1;
        for (var cut : sheet.cuts()) {
            if (cut.number() != number++) {
                faults.add("cut " + cut.number() + " is not numbered in order.");
            }
            saw(cut);
        }
        sheet.pieces().forEach(piece -> take("piece '" + piece.label() + "'", piece.area()));
        sheet.offcuts().forEach(offcut -> take("offcut", offcut));
        panels.forEach(this::discard);
        return faults;
    }

    /** Area turned to dust, units². */
    long sawdust() {
        return sawdust;
    }

    /** Area of what is too narrow to be an offcut, units². */
    long waste() {
        return waste;
    }

    private void saw(Cut cut) {
        var divided = panels.stream().filter(panel -> divides(cut, panel)).toList();
        if (divided.size() != 1) {
            faults.add("cut " + cut.number() + " along " + cut.kerf() + " divides " + divided.size() + " panels.");
            return;
        }
        var panel = divided.get(0);
        panels.remove(panel);
        sawdust += cut.kerf().size();
        split(panel, cut);
    }

    private boolean divides(Cut cut, Area panel) {
        var strip = cut.kerf();
        return cut.direction() == Direction.RIP
                ? strip.x() == panel.x()
                        && strip.length() == panel.length()
                        && within(strip.y(), strip.width(), panel.y(), panel.y() + panel.width())
                : strip.y() == panel.y()
                        && strip.width() == panel.width()
                        && within(strip.x(), strip.length(), panel.x(), panel.x() + panel.length());
    }

    /** Inside the panel at the blade's width, or narrower where the blade runs off the far edge. */
    private boolean within(int from, int width, int start, int end) {
        int to = from + width;
        return from > start && (width == kerf && to < end || width <= kerf && to == end && from < end);
    }

    private void split(Area panel, Cut cut) {
        var strip = cut.kerf();
        if (cut.direction() == Direction.RIP) {
            int after = strip.y() + strip.width();
            keep(new Area(panel.x(), panel.y(), panel.length(), strip.y() - panel.y()));
            keep(new Area(panel.x(), after, panel.length(), panel.y() + panel.width() - after));
        } else {
            int after = strip.x() + strip.length();
            keep(new Area(panel.x(), panel.y(), strip.x() - panel.x(), panel.width()));
            keep(new Area(after, panel.y(), panel.x() + panel.length() - after, panel.width()));
        }
    }

    private void keep(Area panel) {
        if (panel.size() > 0) {
            panels.add(panel);
        }
    }

    private void take(String what, Area area) {
        if (!panels.remove(area)) {
            faults.add(what + " at " + area + " is not what the cuts leave.");
        }
    }

    private void discard(Area panel) {
        if (isWorthKeeping(panel)) {
            faults.add("the cuts leave " + panel + ", which is neither piece nor offcut.");
        }
        waste += panel.size();
    }

    private boolean isWorthKeeping(Area panel) {
        double length = SheetUnit.mm(Math.max(panel.length(), panel.width()));
        double width = SheetUnit.mm(Math.min(panel.length(), panel.width()));
        return keep.isWorth(length, width);
    }
}
