package org.standwright.packet.wall;

import java.util.stream.Stream;
import org.standwright.drawing.wall.CleatSection;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;

/** The section that all cleats share, and how it is ripped safely. Common practice, no source, but for the width. */
final class CleatPage implements WallPages.Page {
    private static final double FIGURE = 115;

    private static final String SAFE =
            "Guard and spreader stay on. Support both sides beyond the blade, push the strip at the fence right through, "
                    + "and let the blade stop before you take the other. Nothing is trapped under the blade.";
    private static final String SCRAP =
            "Try every setting on a scrap of the same sheet: one strip on the other must slide down and draw tight to a "
                    + "flat board behind them.";

    @Override
    public void print(WallPaper paper, Flow flow) {
        flow.freshPage();
        flow.heading("The cleats");
        flow.figure(CleatSection.of(paper.walls(), flow.width(), FIGURE, flow.measure()));
        flow.heading("Ripping them");
        Stream.of(width(paper), blade(paper), fence(paper), SAFE, pairs(paper), tips(paper), single(paper), SCRAP)
                .filter(words -> !words.isEmpty())
                .forEach(words -> flow.item(Mark.BOX_ONLY, words));
    }

    private static String width(WallPaper paper) {
        var cleat = paper.design().cleat();
        double kerf = paper.design().saw().kerf();
        return "One rip makes two strips of a blank. Its width 2 L − t tan θ + k / cos θ = "
                + paper.exact(cleat.board(kerf)) + ", with long face L = " + paper.exact(cleat.face())
                + ", thickness t = " + paper.exact(cleat.thickness()) + ", tilt θ = " + Degrees.of(cleat.tilt())
                + " and kerf k = " + paper.exact(kerf) + ". Measure your sheet and your kerf first; a thinner sheet "
                + "changes the width.";
    }

    private static String blade(WallPaper paper) {
        var cleat = paper.design().cleat();
        double least = cleat.thickness() / StrictMath.cos(StrictMath.toRadians(cleat.tilt()));
        return "Tilt the blade " + Degrees.of(cleat.tilt()) + " from square, away from the fence. Its teeth must reach "
                + "t / cos θ = " + paper.exact(least) + " along the tilt, and only a little more.";
    }

    private static String fence(WallPaper paper) {
        return "Good face up. From the fence to the kerf, at the table: L − t tan θ = "
                + paper.exact(paper.design().cleat().shortFace())
                + ", the short face. So both strips come out equal.";
    }

    private static String pairs(WallPaper paper) {
        return "The strip at the fence comes out with its long face up, the other one with its short face up. On the "
                + "wall the long face is towards the room: of each pair one strip shows the good face of the sheet "
                + "there and the other its back. It matters for looks alone; where it does, mark the backs as they fall "
                + "and hang those strips where holders cover them. A hanger's long face is towards the wall.";
    }

    private static String tips(WallPaper paper) {
        var cleat = paper.design().cleat();
        return cleat.blunt() > 0
                ? "Then take " + paper.exact(cleat.blunt()) + " off the sharp tips of both: blade square, fence "
                        + paper.exact(cleat.height())
                        + " against the square edge, long face down; or plane them to that "
                        + "width. A hanger then seats on the bevel and not on its tip. All heights count from the edge "
                        + "that this leaves."
                : "The tips stay sharp in this design: ease them so far that they do not cut a hand.";
    }

    private static String single(WallPaper paper) {
        var cleat = paper.design().cleat();
        var flat = paper.exact(cleat.thickness() - cleat.bevelDepth());
        return "A piece without a partner leaves the sheet " + paper.exact(cleat.height()) + " wide"
                + (cleat.blunt() > 0 ? ", its tip off already" : "")
                + ". It takes the same setting of blade and fence, "
                + "good face up" + (cleat.blunt() > 0 ? ": the bevel leaves " + flat + " of its edge flat" : "")
                + ". A blank of several pieces in a row is bevelled whole, before it is crosscut.";
    }
}
