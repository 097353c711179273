package org.standwright.design.wall.holder;

import org.standwright.design.frame.Exact;
import org.standwright.design.wall.Holder;
import org.standwright.geom.Grid;
import org.standwright.part.Material;

/** How large the drawers of a cabinet are. Play as of drawers on runners: 1 mm a side, 1.5 mm in height (shop practice). */
record DrawerSize(HolderFrame frame, Holder.Cabinet cabinet) {
    static final double SIDE_PLAY = 1;
    static final double HEIGHT_PLAY = 1.5;
    /** Behind a shut drawer, mm; common practice, no source. */
    static final double BEHIND = 3;
    /** Wood between the lowest dado and that of the carcass's bottom, mm; common practice, no source. */
    static final double LOWEST = 6;
    /** Width of a finger hole in a front, mm; common practice, no source. */
    static final double FINGER = 25;
    /** Between a drawer's upper edge and what lies above it, mm. */
    private static final double GAP = 4;
    /** Above the things, mm; common practice, no source. */
    private static final double OVER = 5;
    /** Between things that lie beside each other in a drawer, mm; common practice, no source. */
    private static final double BESIDE = 2;
    /** The deepest drawer inside that still hangs well on a wall, mm; common practice, no source. */
    private static final double DEEPEST = 400;
    /** Inside a drawer before and behind its things together, mm. */
    private static final double ROUND = 20;
    /** The lowest wall with a finger hole, mm; common practice, no source. */
    private static final double LEAST_WALL = 40;
    /** The thinnest bottom that runs in dados, mm; common practice, no source. */
    private static final double LEAST_BOTTOM = 9;
    /** How far a bottom's screws may reach into a side's edge, mm; common practice, no source. */
    private static final double INTO_EDGE = 30;
    /** More drawers have no use, only a mistaken number. */
    private static final int MOST = 20;

    Material bottomSheet() {
        return Grid.less(frame.thin().thickness(), LEAST_BOTTOM) ? frame.sheet() : frame.thin();
    }

    /** Thickness of a drawer's bottom, mm. */
    double bottom() {
        return bottomSheet().thickness();
    }

    /** Over all, front to back, mm. */
    double depth() {
        return inner() + 2 * frame.board();
    }

    /** Inside a drawer, front to back, mm: its things lie in ranks, one behind the other. */
    private double inner() {
        int across = Math.max(1, across());
        int ranks = (share(cabinet.drawers()) + across - 1) / across;
        return ranks * cabinet.things().depth() + ROUND;
    }

    /** How many things lie beside each other in a drawer. */
    private int across() {
        return (int) Math.floor((inside() + BESIDE) / (cabinet.things().width() + BESIDE) + Grid.STEP);
    }

    /** Between the sides of the carcass, mm. */
    double opening() {
        return cabinet.width() - 2 * frame.board();
    }

    /** Of front and back of a drawer, mm. */
    double front() {
        return opening() - 2 * SIDE_PLAY;
    }

    /** The least height between bottom and top of the carcass, mm. */
    double leastRoom() {
        return LOWEST + cabinet.drawers() * (bottom() + leastWall() + GAP);
    }

    /** From one drawer to the next, mm. */
    double cell(double room) {
        return (room - LOWEST) / cabinet.drawers();
    }

    /** Height of a drawer's walls above its bottom, mm. */
    double wall(double cell) {
        return Math.max(leastWall(), Exact.onTapeDown(frame.design().unit(), cell - bottom() - GAP));
    }

    double screw() {
        return frame.screwing()
                .between(bottom() + Screwing.LEAST_BITE, bottom() + INTO_EDGE, "The bottom of a drawer on its sides");
    }

    private double leastWall() {
        return Math.max(LEAST_WALL, cabinet.things().height() + OVER);
    }

    /** Refuses drawers that are too narrow for their share of the things. */
    void check() {
        if (cabinet.drawers() < 1 || cabinet.drawers() > MOST) {
            throw frame.refused("/drawers", "has " + cabinet.drawers() + " drawers.", "Give it 1 to " + MOST + ".");
        }
        double walls = cabinet.width() - inside();
        double need = Math.max(cabinet.things().width(), frame.leastWidth() - walls);
        if (Grid.less(inside(), need)) {
            throw frame.refused(
                    "/width",
                    "is " + frame.length(cabinet.width()) + " wide, " + frame.length(inside())
                            + " inside its drawers, but takes " + frame.length(need) + " there.",
                    "Make it " + Exact.up(frame.design().unit(), need + walls) + " wide or more.");
        }
        if (Grid.less(DEEPEST, inner())) {
            throw frame.refused(
                    "/drawers",
                    "would need drawers " + frame.length(inner()) + " deep inside for its "
                            + share(cabinet.drawers()) + " things each, but " + frame.length(DEEPEST)
                            + " is the most that hangs well on a wall.",
                    "Give it more drawers, or make it wider.");
        }
    }

    /** Between a drawer's sides, mm. */
    private double inside() {
        return front() - 2 * frame.board();
    }

    private int share(int drawers) {
        return (cabinet.things().count() + drawers - 1) / drawers;
    }
}
