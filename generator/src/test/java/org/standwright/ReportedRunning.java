package org.standwright;

/**
 * What drawers run on, and the room around their boxes, mm. Slides: 10 below the box and 6 above; runners: 1 at each
 * side, 1.5 in height; a bottom's groove 10 above the lower edge. Common practice, no source.
 */
record ReportedRunning(Report report) {
    boolean isSlide() {
        return report.entry().text("/design/hang/kind").equals("slides");
    }

    double side() {
        return isSlide() ? report.number("/design/hang/slide/sideSpace") : 1;
    }

    double below() {
        return isSlide() ? 10 : bar();
    }

    /** From the box to the upper edge of its cell; a kicker hangs over the top one, a runner above over the others. */
    double above(boolean top) {
        return isSlide() ? 6 : top ? 1.5 + bar() : 1.5 - report.gap();
    }

    /** From what stands highest in the cell to its upper edge. */
    double free(boolean top) {
        return isSlide() ? 6 : top ? 0 : above(false);
    }

    double leastBox() {
        double groove = report.thickness("bottom") + report.number("/design/fit");
        return isSlide()
                ? report.tapeUp(line() + report.number("/design/hang/slide/bodyHeight") / 2)
                : report.tapeUp(Math.max(10 + groove + 30, bar()));
    }

    /** Slides: a box to the tape's mark; runners: all of its cell. */
    double boxHeight(double cell, boolean top) {
        double height = cell - below() - above(top);
        return isSlide() ? report.tapeDown(height) : height;
    }

    /** The longest slide, or runners that leave a stop of 25 and 1 before the back, and 1 before an overlay front's. */
    double boxDepth() {
        double room =
                report.plan(false) - report.thickness("back") - (report.isInset() ? report.thickness("front") : 0);
        if (!isSlide()) {
            return report.tapeDown(room - 25 - 1 - (report.isInset() ? 0 : 1));
        }
        double usable =
                room - report.number("/design/hang/slide/setBack") - report.number("/design/hang/slide/rearSpace");
        return report.list("/design/hang/slide/lengths").stream()
                .mapToDouble(size -> size.number("/length"))
                .filter(length -> length <= usable + 1e-6)
                .max()
                .orElseThrow();
    }

    /** Centre of the slide above the box's lower edge: over the groove by 6. */
    double line() {
        double overGroove = 10 + report.thickness("bottom") + report.number("/design/fit") + 6;
        return report.tapeUp(Math.max(overGroove, report.number("/design/hang/slide/bodyHeight") / 2));
    }

    private double bar() {
        return report.number("/design/hang/bar/thickness");
    }
}
