package org.standwright.check.wall;

import org.standwright.check.wall.statics.Hanging;
import org.standwright.check.wall.statics.ScrewLoad;
import org.standwright.design.wall.built.Strip;

/**
 * The screws at one stud of a strip: of several each is drawn in step with its height over the strip's lower edge, and all
 * carry alike (own derivation).
 */
record StudScrews(CleatSection section, Strip strip) {

    /**
     * What the highest gets of something that hangs on the strip.
     *
     * @param part of the whole that this stud gets
     */
    ScrewLoad highest(Hanging hanging, double part) {
        var one = section.pull(hanging, top()).perScrew();
        return shared(part * one.out(), part * one.sideways());
    }

    /** What the highest gets of the strip itself, spread evenly over its studs, half its thickness before the wall. */
    ScrewLoad own() {
        double weight = section.weight(strip.along().length()) / strip.studs().size();
        return shared(weight * section.bevel().middle() / top(), weight);
    }

    private ScrewLoad shared(double out, double across) {
        double squares =
                strip.screws().stream().mapToDouble(height -> height * height).sum();
        return new ScrewLoad(
                out * top() * top() / squares, across / strip.screws().size());
    }

    private double top() {
        return strip.screws().get(strip.screws().size() - 1);
    }
}
