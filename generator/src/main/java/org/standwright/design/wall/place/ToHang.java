package org.standwright.design.wall.place;

import org.standwright.assembly.PlacedPart;
import org.standwright.design.wall.Things.Use;
import org.standwright.design.wall.built.MadeHolder;
import org.standwright.geom.Box3;

/**
 * A holder that wants a place. Lengths in the frame of {@link MadeHolder}.
 *
 * @param at its place in the design, from 0
 * @param lift how far it is lifted to come off the wall, mm
 * @param mass of its boards and the things in it, kg
 */
record ToHang(int at, MadeHolder made, double lift, double mass) {
    /** Of plywood, near enough to tell heavy from light, kg/mm³. */
    private static final double DENSITY = 680e-9;

    static ToHang of(int at, MadeHolder made, double lift) {
        double boards = made.parts().stream()
                .map(PlacedPart::part)
                .mapToDouble(part -> part.length() * part.width() * part.thickness())
                .sum();
        return new ToHang(at, made, lift, made.holder().things().wholeMass() + boards * DENSITY);
    }

    String name() {
        return made.holder().name();
    }

    Use use() {
        return made.holder().things().use();
    }

    boolean isFlammable() {
        return made.holder().things().flammable();
    }

    boolean isByHand() {
        return made.holder().place().isPresent();
    }

    Box3 box() {
        return made.box();
    }

    double width() {
        return box().size().x();
    }

    /** How far out from the wall it reaches, mm. */
    double depth() {
        return -box().min().y();
    }

    /** Its lowest, hung on a row of this height, mm. */
    double low(double row) {
        return row + box().min().z();
    }

    /** Its highest while it is lifted off a row of this height, mm. */
    double high(double row) {
        return row + box().max().z() + lift;
    }

    double middle(double row) {
        return row + (box().min().z() + box().max().z()) / 2;
    }

    /** The hanger is as long as the back, mm. */
    double hanger() {
        return made.back().width();
    }

    /** Left end of the hanger from the left edge of the holder, mm. */
    double hangerFrom() {
        return made.back().x0();
    }
}
