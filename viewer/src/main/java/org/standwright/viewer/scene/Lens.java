package org.standwright.viewer.scene;

/** How the eye sees depth. */
public enum Lens {
    /** What is farther away looks smaller. */
    PERSPECTIVE(28),
    /** What is parallel stays so, as on a drawing: a very long lens from very far away. */
    PARALLEL(0.1);

    private final double angle;

    Lens(double angle) {
        this.angle = angle;
    }

    /** The angle of view from the lowest to the highest point seen, degrees. */
    double angle() {
        return angle;
    }

    /** Tangent of half the angle of view. */
    double tangent() {
        return Math.tan(Math.toRadians(angle / 2));
    }

    /** From where a height fills the picture, mm in front of it. */
    double distance(double span) {
        return span / 2 / tangent();
    }
}
