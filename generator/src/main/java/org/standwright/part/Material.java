package org.standwright.part;

import org.standwright.geom.Require;

/**
 * What a board is made of, as measured.
 *
 * @param thickness measured, mm; never the nominal one
 * @param density kg/m³
 */
public record Material(String name, double thickness, double density, Grain grain) {
    public Material {
        Require.named("material", name);
        Require.positive("thickness", thickness, name);
        Require.positive("density", density, name);
    }
}
