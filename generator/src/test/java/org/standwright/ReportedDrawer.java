package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.Area.same;

/** One drawer: its cell, its box and the inside of that, and where its slides are. */
final class ReportedDrawer {
    /** Between the machine's bolts and a box, mm; common practice, no source. */
    private static final double BELOW_BOLTS = 3;

    private final Report report;
    private final Entry drawer;
    private final ReportedRunning running;

    ReportedDrawer(Report report, Entry drawer) {
        this.report = report;
        this.drawer = drawer;
        this.running = new ReportedRunning(report);
    }

    void check(Area front, Area opening, boolean top) {
        double bottom = Math.max(front.z0(), opening.z0());
        double cell = Math.min(front.z1(), opening.z1()) - bottom;
        same(drawer.number("/cell"), cell, "cell");
        double bolts = Math.max(0, bottom + cell - running.free(top) - (lowestBolt(opening) - BELOW_BOLTS));
        double width = opening.width() - 2 * running.side();
        double height = running.boxHeight(cell - bolts, top);
        size("/box", width, running.boxDepth(), height);
        assertThat(height).as("box").isGreaterThanOrEqualTo(running.leastBox() - 1e-6);

        double wall = report.thickness("box");
        size("/inside", width - 2 * wall, running.boxDepth() - 2 * wall, height - 10 - report.thickness("bottom"));
        slide(bottom);
    }

    private void size(String what, double width, double depth, double height) {
        same(drawer.number(what + "/width"), width, what + " width");
        same(drawer.number(what + "/depth"), depth, what + " depth");
        same(drawer.number(what + "/height"), height, what + " height");
    }

    private void slide(double bottom) {
        assertThat(drawer.has("/slide")).isEqualTo(running.isSlide());
        assertThat(drawer.has("/slideLineOnBox")).isEqualTo(running.isSlide());
        if (running.isSlide()) {
            double inside = report.number("/carcass/min/2") + report.panel();
            same(drawer.number("/slide/length"), running.boxDepth(), "slide");
            same(drawer.number("/slideLineOnBox"), running.line(), "slide line on the box");
            same(
                    drawer.number("/slideLineOnSide"),
                    bottom + running.below() + running.line() - inside,
                    "slide line on the side");
        }
    }

    /** Lower end of the bolts whose washers lie over this opening, or the sky. */
    private double lowestBolt(Area opening) {
        double lowest = Double.POSITIVE_INFINITY;
        boolean over = false;
        for (var group : report.list("/groups")) {
            for (var block : group.list("/blocks")) {
                if (block.kind().equals("bolt")) {
                    lowest = Math.min(lowest, block.number("/box/min/2"));
                    over |= block.text("/label").endsWith("washer")
                            && block.number("/box/max/0") > opening.x0()
                            && block.number("/box/min/0") < opening.x1();
                }
            }
        }
        return over ? lowest : Double.POSITIVE_INFINITY;
    }
}
