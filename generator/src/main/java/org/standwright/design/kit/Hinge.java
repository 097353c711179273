package org.standwright.design.kit;

/** A hinge, of which a door gets two or more. */
public sealed interface Hinge {
    String name();

    /**
     * A concealed hinge: a cup in the door, an arm on a plate on the carcass.
     *
     * @param cup diameter of the cup, mm
     * @param cupDepth mm
     * @param cupFromEdge centre of the cup from the door's edge, mm
     * @param overlay how far a door laps its upright with the hinge in the middle of its adjustment, mm; 0 for inset doors
     * @param plateSetBack of the plate's screws from the carcass's front edge, or from an inset door, mm
     * @param plateSpacing between the plate's two screws, mm
     * @param reach how far arm and plate reach into the opening from the side, mm
     * @param depth how far they reach behind the carcass's front edge, or behind an inset door, mm
     * @param height of the plate, mm
     * @param opening angle, degrees
     */
    record Concealed(
            String name,
            double cup,
            double cupDepth,
            double cupFromEdge,
            double overlay,
            double plateSetBack,
            double plateSpacing,
            double reach,
            double depth,
            double height,
            double opening)
            implements Hinge {}

    /**
     * A butt hinge with two equal leaves, let in flush.
     *
     * @param length along its pin, mm
     * @param leaf width of one leaf, mm
     * @param thickness of one leaf, mm
     * @param screws on one leaf
     */
    record Butt(String name, double length, double leaf, double thickness, int screws) implements Hinge {}
}
