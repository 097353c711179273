package org.standwright.design.wall.holder;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standwright.assembly.Hardware;
import org.standwright.design.frame.Exact;
import org.standwright.design.wall.Holder;
import org.standwright.geom.Grid;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Hole;

/** Two dowels for each thing, as far apart as it is wide, glued into bores square to the back: they do not slope upwards. */
final class PegsBody {
    /** Wood left behind a bore, mm. */
    private static final double BEHIND = 4;
    /** A dowel stands out by so many diameters at most; common practice, no source. */
    private static final double SLENDER = 15;
    /** Wood between a dowel and the screws above and below it, mm; common practice, no source. */
    private static final double CLEAR = 8;

    private final HolderFrame frame;
    private final Holder.Pegs pegs;

    PegsBody(HolderFrame frame, Holder.Pegs pegs) {
        this.frame = frame;
        this.pegs = pegs;
    }

    Body body() {
        double diameter = pegs.dowel().diameter();
        double out = pegs.dowel().length() - bore();
        var hung = new HangingRow(
                frame, pegs.things().width() + diameter + HolderFrame.BESIDE, diameter / 2 + HolderFrame.BESIDE);
        check(out, hung);
        double reach = out - frame.face();
        double bottom = frame.bottom(reach, 0);
        var holes = new ArrayList<Feature>();
        for (double x : hung.centres()) {
            holes.add(hole(x - pegs.things().width() / 2, hung.level() - bottom));
            holes.add(hole(x + pegs.things().width() / 2, hung.level() - bottom));
        }
        var dowels = new Hardware(item(), holes.size(), pegs.name() + ", pegs, glued into the back");
        double things = pegs.things().depth() / 2 - frame.face();
        return hung.body(holes, List.of(dowels), bottom, hung.level() + diameter / 2, things, reach);
    }

    /** Its name, with what that does not say: that it is a dowel, and of which size, where there is no figure in it. */
    private String item() {
        var name = pegs.dowel().name();
        boolean sized = name.chars().anyMatch(Character::isDigit);
        return (name.toLowerCase(Locale.ROOT).contains("dowel") ? "" : "dowel ")
                + name
                + (sized
                        ? ""
                        : ", " + frame.length(pegs.dowel().diameter()) + " x "
                                + frame.length(pegs.dowel().length()));
    }

    private double bore() {
        return frame.board() - BEHIND;
    }

    private Hole hole(double x, double y) {
        return Hole.blind(Face.SHOW, x, y, pegs.dowel().diameter(), bore(), "bore for a dowel");
    }

    private void check(double out, HangingRow hung) {
        double diameter = pegs.dowel().diameter();
        double thing = pegs.things().depth();
        if (Grid.less(out, thing)) {
            throw frame.refused(
                    "/dowel",
                    "has dowels that stand out " + frame.length(Math.max(0, out)) + ", but its things are "
                            + frame.length(thing) + " deep.",
                    "Use dowels " + Exact.up(frame.design().unit(), thing + bore()) + " long or more.");
        }
        if (Grid.less(SLENDER * diameter, out)) {
            throw frame.refused(
                    "/dowel",
                    "has dowels of " + frame.length(diameter) + " that stand out " + frame.length(out)
                            + ", more than 15 diameters.",
                    "Use thicker dowels, or cut them to "
                            + frame.length(Exact.onTapeDown(frame.design().unit(), SLENDER * diameter + bore()))
                            + " or less.");
        }
        double most = Math.min(2 * (hung.room() - CLEAR), pegs.things().width() - CLEAR);
        if (Grid.less(most, diameter)) {
            throw frame.refused(
                    "/dowel",
                    "has dowels of " + frame.length(diameter) + " with no wood left between them, or between them and"
                            + " the screws of the back.",
                    "Use thinner dowels, or a hook for things so narrow.");
        }
    }
}
