package org.standwright.design.column;

import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.geom.Rect;

/**
 * How far fronts reach over the panels around their opening, and the gaps that they leave there.
 *
 * <p>Inset fronts stay within the opening with the whole gap all round. Overlay fronts cover an outer panel and half of
 * a shared one; they leave the whole gap at the carcass's upper and lower end, half of it everywhere else.
 */
public final class FrontReach {
    private final boolean inset;
    private final double panel;
    private final double gap;

    public FrontReach(StandDesign design) {
        this.inset = design.drawers().mount() == Mount.INSET;
        this.panel = design.carcass().sheet().material().thickness();
        this.gap = design.drawers().gap();
    }

    /**
     * What n fronts on top of each other have to share of a zone, mm: {@code edges} above and below them together, {@code
     * gap} between (references 7.1, own derivation).
     */
    public static double room(double zone, int n, double edges, double gap) {
        return zone - edges - (n - 1) * gap;
    }

    /** What n fronts on top of each other have to share of an opening of this height between these walls, mm. */
    double room(double opening, int n, Walls walls) {
        return room(opening + over(walls.upper()) + over(walls.lower()), n, edges(walls), gap);
    }

    /** The area in which fronts stand, from edge to edge, seen from the front. */
    Rect fronts(Rect opening, Walls walls) {
        double side = inset ? gap : gap / 2;
        return new Rect(
                opening.x0() - over(walls.left()) + side,
                opening.y0() - over(walls.lower()) + endGap(walls.lower()),
                opening.x1() + over(walls.right()) - side,
                opening.y1() + over(walls.upper()) - endGap(walls.upper()));
    }

    double gap() {
        return gap;
    }

    double over(Wall wall) {
        return inset ? 0 : wall == Wall.OUTER ? panel : panel / 2;
    }

    /** How far fronts lap an upright, an outer or a shared one, mm; 0 for inset fronts. */
    public double lap(boolean outer) {
        return inset ? 0 : over(outer ? Wall.OUTER : Wall.SHARED) - gap / 2;
    }

    /** What a front at this end lies over the panel there, so that nothing stands behind it, mm. */
    double lost(Wall wall) {
        return Math.max(0, over(wall) - endGap(wall));
    }

    private double edges(Walls walls) {
        return endGap(walls.upper()) + endGap(walls.lower());
    }

    private double endGap(Wall wall) {
        return inset || wall == Wall.OUTER ? gap : gap / 2;
    }
}
