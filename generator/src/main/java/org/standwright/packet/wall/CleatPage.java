package org.standwright.packet.wall;

import org.standwright.drawing.wall.CleatSection;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;

/** The section that all cleats share, and how it is ripped safely. Common practice, no source, but for the width. */
final class CleatPage implements WallPages.Page {
    private static final double FIGURE = 115;

    @Override
    public void print(WallPaper paper, Flow flow) {
        flow.freshPage();
        flow.heading("The cleats");
        flow.figure(CleatSection.of(paper.walls(), flow.width(), FIGURE, flow.measure()));
        flow.heading("Ripping them");
        flow.item(Mark.BOX_ONLY, width(paper));
        flow.item(Mark.BOX_ONLY, blade(paper));
        flow.item(
                Mark.BOX_ONLY,
                "Try both settings on a scrap of the same sheet: one strip on the other must slide down and draw "
                        + "tight to a flat board behind them.");
        flow.item(
                Mark.BOX_ONLY,
                "The blade is tilted away from the fence, so that nothing is trapped under it beside the fence. "
                        + "Guard and spreader stay on. Support both strips beyond the blade, push the one at the fence "
                        + "right through, and let the blade stop before you take the other.");
        flow.item(Mark.BOX_ONLY, blunt(paper));
    }

    private static String width(WallPaper paper) {
        var cleat = paper.design().cleat();
        double kerf = paper.design().saw().kerf();
        return "One rip makes two strips. Board width 2 L − t tan θ + k / cos θ = "
                + paper.exact(cleat.board(kerf)) + ", with long face L = " + paper.exact(cleat.face())
                + ", thickness t = " + paper.exact(cleat.thickness()) + ", tilt θ = " + Degrees.of(cleat.tilt())
                + " and kerf k = " + paper.exact(kerf) + ". Measure your sheet and your kerf first; a thinner sheet "
                + "changes the width.";
    }

    private static String blade(WallPaper paper) {
        var cleat = paper.design().cleat();
        double least = cleat.thickness() / StrictMath.cos(StrictMath.toRadians(cleat.tilt()));
        return "Tilt the blade " + Degrees.of(cleat.tilt()) + " from square. Its teeth must reach t / cos θ = "
                + paper.exact(least) + " along the tilt, and only a little more.";
    }

    private static String blunt(WallPaper paper) {
        var cleat = paper.design().cleat();
        return cleat.blunt() > 0
                ? "Take " + paper.exact(cleat.blunt()) + " off the sharp tips, of strips and hangers alike, so that a "
                        + "hanger seats on the bevel and not on its tip. All heights count from the edge that this "
                        + "leaves."
                : "The tips stay sharp in this design: ease them so far that they do not cut a hand.";
    }
}
