package org.standwright.solid;

import java.util.Optional;
import org.standwright.solid.layer.Ring;
import org.standwright.solid.mesh.Planes;
import org.standwright.solid.mesh.Shell;

/**
 * A cut that touches no other, nor any face of the board but where it enters: a hole in the middle of nowhere. What it
 * leaves is known without cutting: walls, a floor where it ends, and a gap in each face that it enters by.
 *
 * @param bore the straight part of it
 * @param cone that widens it at one face
 */
record FreeCut(Prism bore, Optional<Cone> cone) {
    /** The cut as a free one if it has that form and lies within the faces that it enters by. */
    static Optional<FreeCut> of(Cut cut, Workpiece workpiece) {
        if (!(cut.tools().get(0) instanceof Prism bore) || !bore.ring().isConvex()) {
            return Optional.empty();
        }
        if (cut.tools().size() == 1) {
            return isWithin(bore, workpiece) ? Optional.of(new FreeCut(bore, Optional.empty())) : Optional.empty();
        }
        return cut.tools().get(1) instanceof Cone cone && workpiece.isAmidst(cone.mouth())
                ? Optional.of(new FreeCut(bore, Optional.of(cone)))
                : Optional.empty();
    }

    private static boolean isWithin(Prism bore, Workpiece workpiece) {
        if (bore.isUpright()) {
            return workpiece.isAmidst(bore.ring());
        }
        var face = bore.direction().seen(workpiece.board());
        return workpiece.isWholeBoard()
                && bore.ring().isAmidst(Ring.rectangle(face.x0(), face.y0(), face.x1(), face.y1()));
    }

    /** Adds to a shell what the cut changes in the surface of a board without it. */
    void addTo(Shell shell, Planes planes, Extent board) {
        var whole = bore.direction().seen(board);
        int low = Math.max(bore.bottom(), whole.z0());
        int high = Math.min(bore.top(), whole.z1());
        boolean widensLow = cone.isPresent() && !cone.get().isUp();
        boolean widensHigh = cone.isPresent() && cone.get().isUp();
        var lower = ring(bore, widensLow ? cone.get().floor() : low, shell);
        var upper = ring(bore, widensHigh ? cone.get().floor() : high, shell);
        join(lower, upper, shell);
        var lowest = widensLow ? mouth(lower, shell) : lower;
        var highest = widensHigh ? mouth(upper, shell) : upper;
        if (bore.bottom() < whole.z0()) {
            shell.loop(planes.number(bore.level(whole.z0(), -1)), lowest);
        } else {
            close(lowest, true, shell);
        }
        if (bore.top() > whole.z1()) {
            shell.loop(planes.number(bore.level(whole.z1(), 1)), reversed(highest));
        } else {
            close(highest, false, shell);
        }
    }

    private static int[] ring(Prism bore, int w, Shell shell) {
        var points = new int[bore.ring().size()];
        for (int i = 0; i < points.length; i++) {
            var at = bore.point(i, w);
            points[i] = shell.point(at[0], at[1], at[2]);
        }
        return points;
    }

    /** The cone between the bore's end and its mouth in the face. */
    private int[] mouth(int[] bore, Shell shell) {
        var wide = cone.orElseThrow();
        var points = new int[bore.length];
        for (int i = 0; i < points.length; i++) {
            points[i] = shell.point(wide.mouth().u(i), wide.mouth().v(i), wide.face());
        }
        if (wide.isUp()) {
            join(bore, points, shell);
        } else {
            join(points, bore, shell);
        }
        return points;
    }

    /** Walls that look inwards, between two rings counter-clockwise seen from above. */
    private static void join(int[] lower, int[] upper, Shell shell) {
        int last = lower.length - 1;
        for (int i = 0; i < lower.length; last = i++) {
            shell.triangle(lower[i], lower[last], upper[last]);
            shell.triangle(lower[i], upper[last], upper[i]);
        }
    }

    /** A floor that looks up, or a ceiling that looks down; strips rather than a fan, so that no corner has them all. */
    private static void close(int[] ring, boolean up, Shell shell) {
        int from = 0;
        int to = ring.length - 1;
        while (to - from > 1) {
            corner(ring[from], ring[from + 1], ring[to], up, shell);
            from++;
            if (to - from > 1) {
                corner(ring[from], ring[to - 1], ring[to], up, shell);
                to--;
            }
        }
    }

    private static void corner(int a, int b, int c, boolean up, Shell shell) {
        shell.triangle(a, up ? b : c, up ? c : b);
    }

    private static int[] reversed(int[] ring) {
        var back = new int[ring.length];
        for (int i = 0; i < back.length; i++) {
            back[i] = ring[ring.length - 1 - i];
        }
        return back;
    }
}
