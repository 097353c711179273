package org.standwright.design;

/**
 * An opening for a router's plate, made from the measured plate: a rabbet a little deeper than the plate, a ledge
 * with levelling screws that bring it flush, cut right through within the ledge.
 *
 * @param name of the plate
 * @param x centre of the plate from the worktop's left edge, mm
 * @param y centre of the plate from the worktop's front edge, mm
 * @param width of the plate, to the right, mm
 * @param depth of the plate, away from the person, mm
 * @param thickness of the plate, mm
 * @param radius of its corners, mm
 * @param fit how much wider and deeper the rabbet is than the plate, mm
 * @param ledge that carries the plate on each side, mm
 */
public record PlateOpening(
        String name,
        double x,
        double y,
        double width,
        double depth,
        double thickness,
        double radius,
        double fit,
        double ledge) {
    /** How much deeper the rabbet is than the plate, mm: what the levelling screws lift; common practice, no source. */
    public static final double TO_LEVEL = 1;

    /** Depth of the rabbet, mm. */
    public double rabbetDepth() {
        return thickness + TO_LEVEL;
    }
}
