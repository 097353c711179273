package org.standwright.design.kit;

import java.util.Locale;

/**
 * One caster.
 *
 * @param height overall, floor to the top of the plate, mm
 * @param plate outline of the plate; its width is square to the stand's side, its depth along it
 * @param holes centre distances of the four bolt holes, same directions as {@code plate}
 * @param holeDiameter of the holes in the plate, mm
 * @param bolt nominal diameter of the bolt, mm
 * @param swivelRadius the wheel's reach from the plate's centre, mm; 0 for a fixed caster
 * @param wheel its diameter, mm
 * @param rating permitted mass on one caster, kg
 * @param brake locks the wheel and the swivel
 * @param mass kg
 */
public record Caster(
        String name,
        double height,
        Size2 plate,
        Size2 holes,
        double holeDiameter,
        double bolt,
        double swivelRadius,
        double wheel,
        double rating,
        boolean brake,
        double mass) {
    public Caster {
        if (wheel > height) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "The wheel of '%s' is %.1f mm across, but the whole caster is only %.1f mm high. Measure again.",
                    name,
                    wheel,
                    height));
        }
    }

    /** How far the wheel touches the floor away from the plate's centre, whichever way it has turned, mm. */
    public double trail() {
        return Math.max(0, swivelRadius - wheel / 2);
    }
}
