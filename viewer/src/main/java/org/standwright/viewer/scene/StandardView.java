package org.standwright.viewer.scene;

/** Directions that have a name, in the order of their keys 1 to 6. */
public enum StandardView {
    FRONT(0, 0),
    BACK(180, 0),
    LEFT(90, 0),
    RIGHT(-90, 0),
    TOP(0, 90),
    THREE_QUARTER(-32, 20);

    private final double azimuth;
    private final double elevation;

    StandardView(double azimuth, double elevation) {
        this.azimuth = azimuth;
        this.elevation = elevation;
    }

    double azimuth() {
        return azimuth;
    }

    double elevation() {
        return elevation;
    }
}
