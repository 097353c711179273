package org.standwright;

/**
 * How low a front or an opening may be so that what belongs there fits, mm. Hole rows: 32 mm apart for pins of 5 mm
 * (guides to the 32 mm system); all other figures common practice, no source.
 */
record ReportedLeast(Report report) {
    private static final double HAND = 40;
    private static final double ROWS_FROM_LEVEL = 96;
    private static final double PITCH = 32;

    /** The front of a drawer: its box with the room around it, and what the front reaches over panels. */
    double front(int place, int count, Panels panels) {
        var reach = new ReportedReach(report);
        var running = new ReportedRunning(report);
        return running.leastBox()
                + running.below()
                + running.above(place == 0)
                + (place == 0 ? Math.max(0, reach.level(panels.upper())) : 0)
                + (place == count - 1 ? Math.max(0, reach.level(panels.lower())) : 0);
    }

    /** What has neither drawers nor bays in it: the opening, or the front of its door. */
    double opening(Entry content, Panels panels) {
        if (!content.kind().equals("door")) {
            return content.has("/shelves") ? shelved(content, HAND, 0) : HAND;
        }
        double half = ReportedDoors.halfHinge(content);
        double shelves = content.has("/shelves") ? shelved(content, 40 + Math.max(40, half), half) : HAND;
        double opening = Math.max(4 * half + 10, shelves);
        var behind = new ReportedReach(report).openingBehind(0, panels);
        return Math.max(150, opening - behind);
    }

    private double shelved(Entry content, double clear, double halfHinge) {
        double panel = report.panel();
        double count = content.number("/shelves/count");
        if (content.text("/shelves/kind").equals("fixed")) {
            return count * panel + (count + 1) * clear;
        }
        double rows = (count - 1) * PITCH * Math.ceil((panel + HAND) / PITCH - 1e-9);
        return halfHinge == 0
                ? 2 * ROWS_FROM_LEVEL + rows
                : 2 * Math.max(ROWS_FROM_LEVEL, 100 + halfHinge + 7.5) + PITCH + rows;
    }
}
