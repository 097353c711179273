package org.standwright.design.wall;

import org.standwright.geom.Require;

/** The box around a stand and its machine, as it stands with its back to a wall, mm. */
public record StandBox(String name, double width, double depth, double height) {
    public StandBox {
        Require.positive("width", width, name);
        Require.positive("depth", depth, name);
        Require.positive("height", height, name);
    }
}
