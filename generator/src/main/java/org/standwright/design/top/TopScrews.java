package org.standwright.design.top;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.frame.Frame;
import org.standwright.part.Hole;

/** Clearance holes in the sub-top through which the worktop is screwed up from inside. */
public final class TopScrews {
    /** Distance from panels and edges at which a screwdriver still works, mm; common practice, no source. */
    private static final double FROM_PANEL = 40;
    /** Widest spacing of the screws, mm; common practice, no source. */
    private static final double SPACING = 300;

    private final Frame frame;

    public TopScrews(Frame frame) {
        this.frame = frame;
    }

    /** Through holes in the assembly's x and y, bay by bay from the left, front to back. */
    public List<Hole> places() {
        var places = new ArrayList<Hole>();
        double bore = frame.design().screws().panel().clearance();
        for (int bay = 0; bay < frame.openings().size(); bay++) {
            double left = frame.openingLeft(bay);
            for (double x : row(left + FROM_PANEL, left + frame.openings().get(bay) - FROM_PANEL)) {
                for (double y : row(FROM_PANEL, frame.insideDepth() - FROM_PANEL)) {
                    places.add(Hole.through(x, y, bore, "worktop screw"));
                }
            }
        }
        return places;
    }

    /** Even places from one end to the other, no farther apart than the widest spacing. */
    private static List<Double> row(double from, double to) {
        int steps = Math.max(1, (int) StrictMath.ceil((to - from) / SPACING));
        var row = new ArrayList<Double>();
        for (int i = 0; i <= steps; i++) {
            row.add(from + i * (to - from) / steps);
        }
        return row;
    }
}
