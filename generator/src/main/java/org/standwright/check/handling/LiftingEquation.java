package org.standwright.check.handling;

import org.standwright.unit.Measure;
import org.standwright.unit.Units;

/**
 * Revised NIOSH lifting equation (Pub. 94-110, rev. 2021): the mass that nearly all healthy workers may lift in a given
 * posture, RWL = LC HM VM DM AM; rare lifts with a good grip, so that FM and CM are 1. Its metric and its US form round
 * differently and are not mixed.
 */
enum LiftingEquation {
    /** Centimetres and kilograms. */
    METRIC("cm", "kg", 23, 25, 63, 75, 175, 0.003, 4.5),
    /** Inches and pounds. */
    US("in", "lb", 51, 10, 25, 30, 70, 0.0075, 1.8);

    /** Beyond this turn of the trunk nothing is recommended, degrees. */
    private static final double MOST_TURN = 135;

    private final String length;
    private final String mass;
    private final double loadConstant;
    private final double nearest;
    private final double farthest;
    private final double knuckles;
    private final double highest;
    private final double perHeight;
    private final double perTravel;

    LiftingEquation(
            String length,
            String mass,
            double loadConstant,
            double nearest,
            double farthest,
            double knuckles,
            double highest,
            double perHeight,
            double perTravel) {
        this.length = length;
        this.mass = mass;
        this.loadConstant = loadConstant;
        this.nearest = nearest;
        this.farthest = farthest;
        this.knuckles = knuckles;
        this.highest = highest;
        this.perHeight = perHeight;
        this.perTravel = perTravel;
    }

    /** The form whose units a maker reads. */
    static LiftingEquation of(Units units) {
        return units == Units.MM ? METRIC : US;
    }

    /**
     * Recommended weight limit in this form's own units.
     *
     * @param reach of the hands from the middle between the ankles
     * @param height of the hands above the floor
     * @param travel of the hands up or down
     * @param turn of the trunk, degrees
     */
    double limit(double reach, double height, double travel, double turn) {
        return loadConstant * horizontal(reach) * vertical(height) * distance(travel) * asymmetry(turn);
    }

    /** Recommended weight limit, kg, without a turn; lengths in mm. */
    double limitInKilograms(double reach, double height, double travel) {
        double mm = Measure.LENGTH.of(1, length);
        return limit(reach / mm, height / mm, travel / mm, 0) * Measure.MASS.of(1, mass);
    }

    /** Limit in the best posture, kg. */
    double most() {
        return loadConstant * Measure.MASS.of(1, mass);
    }

    private double horizontal(double reach) {
        return reach > farthest ? 0 : nearest / Math.max(reach, nearest);
    }

    private double vertical(double height) {
        return height > highest ? 0 : 1 - perHeight * Math.abs(height - knuckles);
    }

    private double distance(double travel) {
        return travel <= nearest ? 1 : 0.82 + perTravel / travel;
    }

    static double asymmetry(double turn) {
        return turn > MOST_TURN ? 0 : 1 - 0.0032 * turn;
    }
}
