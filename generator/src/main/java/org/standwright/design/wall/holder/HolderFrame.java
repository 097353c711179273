package org.standwright.design.wall.holder;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.WallDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.row.StripScrews;
import org.standwright.geom.Grid;
import org.standwright.part.Material;

/** What all boards of one holder have in common: thicknesses, where its back is, how a refusal is worded. */
record HolderFrame(WallDesign design, Holder holder, String field) {
    /** Room for fingers beside a thing, mm (shop practice). */
    static final double BESIDE = 20;
    /** Room for fingers above a thing, mm (shop practice). */
    static final double ABOVE = 25;
    /** Height of a spacer, mm; common practice, no source. */
    static final double SPACER = 40;
    /** How far a back reaches down for each mm that a holder stands out, so that it does not ride out. */
    private static final double LEVER = 0.6;
    /** So narrow that it still hangs straight, mm; common practice, no source. */
    private static final double NARROWEST = 120;
    /** Wood between a wall screw's head and a lock's screw, mm; common practice, no source. */
    private static final double BETWEEN_SCREWS = 3;
    /** Least thickness in which a housing leaves enough wood, mm; common practice, no source. */
    private static final double THINNEST = 9;
    /** A housing takes one part in three of the thickness (references 7.3). */
    private static final double HOUSED = 3;

    /** Refuses boards too thin for joints, and hangers too narrow for screws. */
    void check() {
        if (Grid.less(board(), THINNEST)) {
            throw refusedAt(
                    "/making/sheet",
                    sheet().name() + " is " + length(board()) + " thick; holders are housed and screwed together, which"
                            + " takes " + length(THINNEST) + ".",
                    "Use a board " + Exact.up(design.unit(), THINNEST) + " thick or more.");
        }
        new Hanger(this, leastWidth()).check();
    }

    Cleat section() {
        return design.cleat();
    }

    /** Thickness of strips and hangers, mm. */
    double cleat() {
        return section().thickness();
    }

    Material sheet() {
        return design.making().sheet().material();
    }

    Material thin() {
        return design.making().thin().material();
    }

    /** Thickness of what carries, mm. */
    double board() {
        return sheet().thickness();
    }

    /** Depth of dados, rabbets and grooves: a third of the thickness in whole millimetres. */
    double housing() {
        return StrictMath.floor(board() / HOUSED);
    }

    /** y of the back's face to the room. */
    double face() {
        return -cleat() - board();
    }

    /** Upper edge of the back, flush with that of the hanger. */
    double top() {
        return section().hangerAbove();
    }

    /**
     * Where the back ends: behind it lies all of its own strip, and where that is too little against riding out, room for a
     * spacer below it. The back's height is one that a tape shows.
     *
     * @param reach how far the holder stands out from the wall, mm
     * @param least how far below 0 the back must reach at least for other reasons, mm
     */
    double bottom(double reach, double least) {
        double own = section().height();
        double need = Math.max(LEVER * reach, least);
        double below = Grid.less(own, need) ? Math.max(need, own + SPACER) : own;
        return top() - Exact.onTapeUp(design.unit(), top() + below);
    }

    /**
     * z of the screws that lock it to its strip: where the strip is whole, as near to its middle as wall screws and their heads
     * leave wood.
     */
    double lock() {
        var heights = StripScrews.heights(design);
        double clear = StripScrews.recess(design).diameter() / 2
                + design.making().screw().diameter() / 2
                + BETWEEN_SCREWS;
        double middle = section().height() / 2;
        return -section().height()
                + IntStream.rangeClosed(1, (int) section().shortFace() - 1)
                        .mapToObj(Double::valueOf)
                        .min(Comparator.comparingDouble((Double height) -> -Math.min(clear, nearest(height, heights)))
                                .thenComparingDouble(height -> Math.abs(height - middle)))
                        .orElse(middle);
    }

    private static double nearest(double height, List<Double> screws) {
        return screws.stream()
                .mapToDouble(screw -> Math.abs(screw - height))
                .min()
                .orElseThrow();
    }

    /** The least width of a holder, in which locking screws miss what stands at its ends, mm. */
    double leastWidth() {
        return Math.max(NARROWEST, 4 * (board() + 12));
    }

    /** Width that things need side by side, with room for fingers at both sides of each, mm. */
    double row(int count) {
        return count * holder.things().width() + (count + 1) * BESIDE;
    }

    /** A width as given, which must do for the things in a row, or what they need. */
    double width(OptionalDouble given, double least) {
        double need = Math.max(row(holder.things().count()), least);
        if (given.isPresent() && Grid.less(given.getAsDouble(), need)) {
            throw refused(
                    "/width",
                    "is " + length(given.getAsDouble()) + " wide, but its " + things() + " with room for fingers take "
                            + length(need) + ".",
                    "Make it " + Exact.up(design.unit(), need) + " wide or more, or leave its width out.");
        }
        return given.orElse(need);
    }

    /** '3 things, 80 mm wide,'. */
    private String things() {
        int count = holder.things().count();
        return (count == 1 ? "thing, " : count + " things, each ")
                + length(holder.things().width()) + " wide,";
    }

    String length(double mm) {
        return design.unit().length(mm);
    }

    Lay lay() {
        return new Lay(this);
    }

    Screwing screwing() {
        return new Screwing(design);
    }

    /** What stands against it as 'holder … {@code reason}'. */
    ImpossibleDesignException refused(String below, String reason, String... ways) {
        return refusedAt(field + below, "Holder '" + holder.name() + "' " + reason, ways);
    }

    static ImpossibleDesignException refusedAt(String pointer, String reason, String... ways) {
        return new ImpossibleDesignException(pointer, reason, List.of(ways));
    }
}
