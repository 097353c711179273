package org.standwright.design.kit;

/**
 * Centre of mass of a machine.
 *
 * @param x from the left of its base, mm
 * @param y from the front of its base, mm
 * @param lowest above the underside of its base, with a head or table at its lowest, mm
 * @param highest the same with it at its highest, mm
 */
public record CentreOfMass(double x, double y, double lowest, double highest) {
    public CentreOfMass {
        if (lowest > highest) {
            throw new IllegalArgumentException("a centre of mass from " + lowest + " to " + highest
                    + " mm is upside down. Give its lowest height first.");
        }
    }
}
