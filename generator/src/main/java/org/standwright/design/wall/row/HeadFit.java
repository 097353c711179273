package org.standwright.design.wall.row;

import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.WallDesign;
import org.standwright.design.frame.Exact;
import org.standwright.geom.Grid;
import org.standwright.part.Recess;

/** Whether the heads of wall screws find room on a strip and in it. */
final class HeadFit {
    private final WallDesign design;
    private final Recess recess;
    private final List<Double> heights;
    private final String field;

    HeadFit(WallDesign design, Recess recess, List<Double> heights) {
        this.design = design;
        this.recess = recess;
        this.heights = heights;
        this.field = design.fixing().washer().isPresent() ? "/fixing/washer" : "/fixing/screw";
    }

    void check() {
        var units = design.unit();
        double head = recess.diameter();
        double bore = design.fixing().screw().clearance();
        double thickness = design.cleat().thickness();
        if (!Grid.less(bore, head)) {
            throw refusal(
                    "A head " + units.length(head) + " wide slips through its bore of " + units.length(bore) + ".",
                    "Use one that is wider than the bore.");
        }
        if (!Grid.less(recess.depth(bore), thickness)) {
            throw refusal(
                    "A head sunk " + units.length(recess.depth(bore)) + " goes right through a strip "
                            + units.length(thickness) + " thick.",
                    "Use a thicker sheet for the cleats, or a thinner screw.");
        }
        if (Grid.less(room(), head)) {
            throw refusal(
                    "A head " + units.length(head) + " wide has only " + units.length(room()) + " on a strip "
                            + units.length(design.cleat().height()) + " high with " + heights.size()
                            + (heights.size() == 1 ? " screw" : " screws") + " at each stud.",
                    "Use a head of " + Exact.length(units, Exact.onTapeDown(units, room())) + " at most"
                            + (heights.size() == 1 ? "." : ", or one screw at each stud."));
        }
    }

    /** The widest head that neither passes an edge or end of the strip nor meets another, mm. */
    private double room() {
        double lowest = heights.get(0);
        double highest = heights.get(heights.size() - 1);
        double toEdge = Math.min(lowest, design.cleat().height() - highest);
        double apart = heights.size() == 1 ? Double.POSITIVE_INFINITY : highest - lowest;
        return Math.min(apart, 2 * Math.min(Overhang.LEAST, toEdge));
    }

    private ImpossibleDesignException refusal(String reason, String wayOut) {
        return new ImpossibleDesignException(field, reason, List.of(wayOut));
    }
}
