package org.standwright.design.wall.place;

import org.standwright.design.wall.Person;
import org.standwright.design.wall.Things.Use;
import org.standwright.geom.Interval;

/**
 * How awkward a place is. All weights are own choice: they say what comes before what, and mean nothing by themselves.
 *
 * <p>A daily thing 100 mm out of reach is as bad as a yearly one 800 mm out of reach; 10 kg cost 2 for each mm above the
 * elbow; a weekly thing hangs up to 150 mm out of reach rather than between studs.
 */
record Cost(Person person) {
    /** Heavier than this prefers to hang low, kg. */
    private static final double HEAVY = 5;

    private static final double ONE_STUD = 50;
    private static final double NO_STUD = 600;

    /** A gap narrower than this takes no other holder, mm. */
    private static final double USELESS = 200;

    private static final double FARTHEST = 400;

    /** Of the height of a row. */
    double height(ToHang holder, double row) {
        double middle = holder.middle(row);
        double miss = Math.max(0, Math.max(person.elbow() - middle, middle - person.eye()));
        double mass = holder.mass();
        double lifted = mass > HEAVY ? mass / HEAVY * Math.max(0, middle - person.elbow()) : 0;
        return weight(holder.use()) * miss + lifted;
    }

    /** Of so many studs behind the hanger. */
    double studs(int studs) {
        return studs >= 2 ? 0 : studs == 1 ? ONE_STUD : NO_STUD;
    }

    /**
     * Of the room that a place spoils for others.
     *
     * @param free the interval of places that it belongs to
     */
    double spoilt(double x, Interval free) {
        double apart = Math.max(0, Math.min(x - free.from(), free.to() - x));
        double wasted = free.length() < USELESS ? free.length() / 4 : 0;
        return Math.min(apart, FARTHEST) / 2 + wasted;
    }

    private static double weight(Use use) {
        return switch (use) {
            case DAILY -> 8;
            case WEEKLY -> 4;
            case MONTHLY -> 2;
            case YEARLY, UNUSED -> 1;
        };
    }
}
