package org.standwright.design.kit;

import java.util.List;

/**
 * A side-mount drawer slide, sold in pairs.
 *
 * @param sideSpace to leave on each side between drawer box and opening, mm
 * @param bodyHeight of the slide, mm
 * @param plate thickness of its metal under a screw's head, mm
 * @param setBack of its front end from the front edge (from the back of the front when inset), mm
 * @param rearSpace to leave behind it, mm
 * @param rating permitted mass of a loaded drawer on a pair, kg
 * @param detent whether it holds the closed drawer
 */
public record Slide(
        String name,
        double sideSpace,
        double bodyHeight,
        double plate,
        double setBack,
        double rearSpace,
        double rating,
        boolean detent,
        List<Size> lengths) {
    public Slide {
        lengths = List.copyOf(lengths);
    }

    /**
     * One length in which it is sold.
     *
     * @param travel how far it opens, mm
     * @param cabinetHoles screw positions from its front end, on the cabinet, mm
     * @param boxHoles screw positions from its front end, on the drawer box, mm
     * @param mass of a pair, kg
     */
    public record Size(double length, double travel, List<Double> cabinetHoles, List<Double> boxHoles, double mass) {
        public Size {
            cabinetHoles = List.copyOf(cabinetHoles);
            boxHoles = List.copyOf(boxHoles);
        }
    }
}
