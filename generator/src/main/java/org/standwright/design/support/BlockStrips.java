package org.standwright.design.support;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Hole;
import org.standwright.part.Part;

/**
 * Two strips of two layers, one along each side from front to back, right below the side panel that brings the load.
 *
 * @param width of a strip, mm
 */
record BlockStrips(Layers layers, double width) implements SupportBed {
    /** Screws that hold a strip to the bottom, through the bottom's face. */
    private static final int SCREWS = 3;
    /** From a recess to the centre of the next screw, mm. */
    private static final double BESIDE_RECESS = 10;

    @Override
    public List<PlacedPart> parts(Frame frame, List<Fixing> fixings) {
        var parts = new ArrayList<PlacedPart>();
        double middle = frame.width() / 2;
        var left = fixings.stream().filter(fixing -> fixing.x() < middle).toList();
        var right = fixings.stream().filter(fixing -> fixing.x() >= middle).toList();
        for (boolean upper : new boolean[] {false, true}) {
            parts.add(strip("left ", width, left, upper, frame));
            parts.add(strip("right ", frame.width(), right, upper, frame));
        }
        return parts;
    }

    /** Along the middle of each strip, between what is fixed at its ends. */
    @Override
    public List<Hole> bottomHoles(Frame frame, List<Fixing> fixings) {
        double middle = frame.depth() / 2;
        double from = BESIDE_RECESS
                + fixings.stream()
                        .filter(fixing -> fixing.y() < middle)
                        .mapToDouble(fixing -> fixing.y() + fixing.reach())
                        .max()
                        .orElseThrow();
        double to = -BESIDE_RECESS
                + fixings.stream()
                        .filter(fixing -> fixing.y() >= middle)
                        .mapToDouble(fixing -> fixing.y() - fixing.reach())
                        .min()
                        .orElseThrow();
        var holes = new ArrayList<Hole>();
        for (double x : new double[] {width / 2, frame.width() - width / 2}) {
            for (int i = 0; i < SCREWS; i++) {
                holes.add(layers.screwHole(x, from + i * (to - from) / (SCREWS - 1)));
            }
        }
        return holes;
    }

    /** Side by side. */
    @Override
    public double leastWidth() {
        return 2 * width;
    }

    /** In its own frame x runs back from the carcass's front edge and y to the left from the strip's right edge. */
    private PlacedPart strip(String side, double rightEdge, List<Fixing> fixings, boolean upper, Frame frame) {
        var wood = layers.wood();
        var label = layers.name() + (upper ? " upper" : " lower");
        var bored = fixings.stream()
                .map(fixing -> fixing.at(fixing.y(), rightEdge - fixing.x()))
                .toList();
        double z = frame.floorToCarcass() - (upper ? wood.thickness() : layers.height());
        return new PlacedPart(
                side + label,
                Part.blank(label, wood, frame.depth(), width).with(layers.bores(bored, upper)),
                new Placement(Axis.Y_PLUS, Axis.X_MINUS, new Vec3(rightEdge, 0, z)));
    }
}
