package org.standwright.design.top;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.design.Cutout;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** Whether every cut-out has wood around it: clear of uprights, edges, bolts, the plate and each other. */
final class CutoutFit {
    /** Wood between two cut-outs, mm; common practice, no source. */
    private static final double BETWEEN = 10;

    private final Frame frame;
    private final Cutouts cutouts;

    CutoutFit(Frame frame) {
        this.frame = frame;
        this.cutouts = new Cutouts(frame);
    }

    void check(UnderTop under, MachineBolts bolts, Optional<Plate> plate) {
        var worktop = Surroundings.ofWorktop(frame, under, bolts);
        if (plate.isPresent()) {
            worktop = worktop.and(
                    new Taken("the plate in the worktop", plate.get().rabbet()).with(BETWEEN));
        }
        var whole = new Surroundings(Seen.FROM_FRONT.of(under.back()), under.againstBack());
        var back = under.backJoint().map(whole::and).orElse(whole);
        var all = frame.design().cutouts();
        for (int i = 0; i < all.size(); i++) {
            boolean level = all.get(i).in() == Cutout.In.WORKTOP;
            var other = new Taken("cut-out " + (i + 1), check(i, level ? worktop : back)).with(BETWEEN);
            worktop = level ? worktop.and(other) : worktop;
            back = level ? back : back.and(other);
        }
    }

    /** The area that the cut-out takes. */
    private Rect check(int index, Surroundings around) {
        var opening = cutouts.opening(frame.design().cutouts().get(index));
        corners(index, opening);
        var spot = new FreeSpot(around.board(), around.taken());
        if (spot.isFree(opening.area())) {
            return opening.area();
        }
        var ways = new ArrayList<String>();
        spot.shift(List.of(opening.area())).ifPresent(shift -> {
            var cutout = frame.design().cutouts().get(index);
            var written = new Written(frame);
            ways.add("Put its centre at x " + written.x(cutout.x() + shift.x()) + ", y "
                    + written.exact(cutout.y() + shift.y()) + ".");
        });
        throw new ImpossibleDesignException(
                "/cutouts/" + index,
                "Cut-out " + (index + 1) + " for '" + opening.purpose() + "' " + around.trouble(opening.area()) + ".",
                ways.isEmpty()
                        ? List.of(new SmallerCutout(frame.design().unit(), around)
                                .way(frame.design().cutouts().get(index), opening.area()))
                        : ways);
    }

    private void corners(int index, Opening opening) {
        double narrow = Math.min(opening.area().width(), opening.area().height());
        if (Grid.less(narrow, 2 * opening.radius())) {
            throw new ImpossibleDesignException(
                    "/cutouts/" + index + "/radius",
                    "Corners of " + frame.design().unit().length(opening.radius())
                            + " are rounder than half of a cut-out of "
                            + frame.design().unit().length(narrow) + ".",
                    List.of("Make the radius " + new Written(frame).exact(narrow / 2) + " or less."));
        }
    }
}
