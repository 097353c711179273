package org.standwright.design.support;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Axis;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;

/**
 * Two strips of two glued layers under the carcass, one along each side from front to back: at least 36 mm of wood under
 * a caster or leveler, right below the side panel that brings the load (shop practice, common practice, no source).
 */
public final class BlockStrips {
    /** Screws that hold a strip to the bottom, through the bottom's face. */
    private static final int SCREWS = 3;
    /** Wood below a recess in the upper layer, mm. */
    private static final double LEAST_WOOD = 3;
    /** Two layers of sheets sold as 18 mm or 3/4 in; the thinnest of them measure 17 mm (references 1.3). */
    private static final double LEAST_LAYER = 17;

    private final String name;
    private final StandDesign design;
    private final Material wood;

    public BlockStrips(String name, StandDesign design) {
        this.name = name;
        this.design = design;
        this.wood = design.carcass().sheet().material();
    }

    public Term term() {
        return Term.fixed(name + "s (two layers)", height());
    }

    public double height() {
        return 2 * wood.thickness();
    }

    /** Refuses layers that a recess would go through, or that together are too thin for what hangs on them. */
    public void check(double recess) {
        double least = Math.max(recess + LEAST_WOOD, LEAST_LAYER);
        if (Grid.less(wood.thickness(), least)) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/carcass/sheet",
                    "A " + name + " of two layers of " + wood.name() + " is " + units.length(height())
                            + " thick; it takes layers of " + units.length(least) + " or more.",
                    List.of("Use a thicker sheet for the carcass, or a plinth."));
        }
    }

    /**
     * The four layers; in a strip's own frame x runs back from the carcass's front edge and y inwards from its outer
     * edge on the right strip, outwards on the left one.
     *
     * @param lower what is bored into the lower layers, seen as on the right strip
     * @param upper the same for the upper layers
     */
    public List<PlacedPart> parts(Frame frame, double width, List<Hole> lower, List<Hole> upper) {
        var parts = new ArrayList<PlacedPart>();
        double bottom = frame.floorToCarcass() - height();
        for (int layer = 0; layer < 2; layer++) {
            var holes = sorted(layer == 0 ? lower : upper);
            double z = bottom + layer * wood.thickness();
            var label = name + " " + (layer == 0 ? "lower" : "upper");
            var left = strip(label, frame, width, sorted(mirrored(holes, width)));
            var right = strip(label, frame, width, holes);
            parts.add(new PlacedPart(
                    "left " + label, left, new Placement(Axis.Y_PLUS, Axis.X_MINUS, new Vec3(width, 0, z))));
            parts.add(new PlacedPart(
                    "right " + label, right, new Placement(Axis.Y_PLUS, Axis.X_MINUS, new Vec3(frame.width(), 0, z))));
        }
        return parts;
    }

    /** Clearance holes in the bottom, in the assembly's x and y, away from what is bored at the strips' ends. */
    public List<Hole> bottomHoles(Frame frame, double width, double clearOfEnds) {
        var holes = new ArrayList<Hole>();
        double bore = design.screws().panel().clearance();
        double from = clearOfEnds;
        double to = frame.insideDepth() - clearOfEnds;
        for (double x : new double[] {width / 2, frame.width() - width / 2}) {
            for (int i = 0; i < SCREWS; i++) {
                holes.add(Hole.through(x, from + i * (to - from) / (SCREWS - 1), bore, "block screw"));
            }
        }
        return holes;
    }

    private Part strip(String label, Frame frame, double width, List<Hole> holes) {
        return Part.blank(label, wood, frame.depth(), width).with(holes);
    }

    /** One order for both strips, so that strips whose holes lie alike are the same part. */
    private static List<Hole> sorted(List<Hole> holes) {
        return holes.stream()
                .sorted(Comparator.comparing(Hole::purpose)
                        .thenComparingDouble(Hole::x)
                        .thenComparingDouble(Hole::y))
                .toList();
    }

    private static List<Hole> mirrored(List<Hole> holes, double width) {
        return holes.stream()
                .map(hole -> new Hole(
                        hole.face(), hole.x(), width - hole.y(), hole.diameter(), hole.depth(), hole.purpose()))
                .toList();
    }
}
