package org.standwright.check.wall;

import java.util.List;
import org.standwright.check.wall.statics.Hanging;
import org.standwright.design.wall.built.Strip;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;
import org.standwright.unit.Gravity;

/** One holder with its things as statics takes it. */
record HungBody(HeldLoad load, Hanging hanging, CleatSection section) {

    /** In the order of the design; none where the statics is not for the tilt of the bevel. */
    static List<HungBody> all(HungWall wall) {
        return new CleatSection(wall.design().cleat()).isRated()
                ? wall.loads().stream().map(load -> of(wall, load)).toList()
                : List.of();
    }

    private static HungBody of(HungWall wall, HeldLoad load) {
        var section = new CleatSection(wall.design().cleat());
        return new HungBody(load, hanging(load, section, load.things()), section);
    }

    private static Hanging hanging(HeldLoad load, CleatSection section, double things) {
        double front = -load.holder().made().thingsCentre().y();
        double boards = load.mass() * load.out() - load.things() * front;
        double mass = load.wood() + things;
        return new Hanging(
                Gravity.newtons(mass),
                Math.max(section.bevel().middle(), (boards + things * front) / mass),
                section.drop(load.holder().backing().below()),
                section.bevel());
    }

    String name() {
        return load.holder().name();
    }

    /** The same with so many kg of things at the place of its things. */
    HungBody holding(double things) {
        return new HungBody(load, hanging(load, section, things), section);
    }

    /** With so many times its mass in all, more things or fewer. */
    HungBody times(double factor) {
        return holding(thingsAt(factor));
    }

    /** Which things that are, kg. */
    double thingsAt(double factor) {
        return Math.max(0, factor * load.mass() - load.wood());
    }

    /** The same, pressed on as well. */
    HungBody pressed(double force, double front) {
        return new HungBody(
                load, hanging.with(force, Math.max(front, section.bevel().middle())), section);
    }

    /** Its hanger along the wall, mm. */
    Interval hanger() {
        var back = load.holder().made().back();
        return new Interval(load.holder().x() + back.x0(), load.holder().x() + back.x1());
    }

    /** The strips of its row that its hanger lies on, from the left. */
    List<Strip> behind(HungWall wall) {
        return HolderScrews.strips(wall, load.holder()).stream()
                .filter(strip -> Grid.less(0, strip.along().overlap(hanger())))
                .toList();
    }

    /**
     * Where on its hanger the load counts as spread evenly, mm: over all of it, or, where its centre of mass is off the
     * middle, over as much of it as has its middle there.
     */
    Interval loaded() {
        var hanger = hanger();
        double half = Math.min(load.along() - hanger.from(), hanger.to() - load.along());
        return half > 1 ? new Interval(load.along() - half, load.along() + half) : hanger;
    }
}
