package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

class OrbitTest {
    private static final Box3 CUBE = new Box3(Vec3.ZERO, new Vec3(1000, 1000, 1000));
    private static final double RIGHT_ANGLE_OF_VIEW = Math.tan(Math.toRadians(45));

    @Test
    void standsInFrontOfTheStandAtNoAngle() {
        assertEye(new Orbit(Vec3.ZERO, 0, 0, 2000), 0, -2000, 0);
    }

    @Test
    void standsOnTheLeftAfterAQuarterTurn() {
        assertEye(new Orbit(Vec3.ZERO, 0, 0, 2000).turned(90, 0), -2000, 0, 0);
    }

    @Test
    void risesWithElevation() {
        assertEye(new Orbit(Vec3.ZERO, 0, 30, 2000), 0, -2000 * Math.sqrt(3) / 2, 1000);
    }

    @Test
    void neverTurnsOverTheTop() {
        assertThat(Orbit.start().turned(0, 500).elevation()).isEqualTo(89);
        assertThat(Orbit.start().turned(0, -500).elevation()).isEqualTo(-89);
    }

    @Test
    void fitsACubeSeenFromTheFrontByItsNearFace() {
        // with 90 degrees of view, a face 1000 mm high fills the picture from 500 mm in front of it
        var fitted = new Orbit(Vec3.ZERO, 0, 0, 2000).fitted(CUBE, RIGHT_ANGLE_OF_VIEW, 1);

        assertThat(fitted.target()).isEqualTo(new Vec3(500, 500, 500));
        assertThat(fitted.distance()).isCloseTo(1.04 * 1000, within(1e-9));
    }

    @Test
    void stepsBackForANarrowWindow() {
        var fitted = new Orbit(Vec3.ZERO, 0, 0, 2000).fitted(CUBE, RIGHT_ANGLE_OF_VIEW, 0.5);

        assertThat(fitted.distance()).isCloseTo(1.04 * 1500, within(1e-9));
    }

    @Test
    void halvesTheDistanceWhenZoomedByTwo() {
        assertThat(new Orbit(Vec3.ZERO, 0, 0, 2000).zoomed(2).distance()).isEqualTo(1000);
    }

    private static void assertEye(Orbit orbit, double x, double y, double z) {
        assertThat(orbit.eye().x()).isCloseTo(x, within(1e-9));
        assertThat(orbit.eye().y()).isCloseTo(y, within(1e-9));
        assertThat(orbit.eye().z()).isCloseTo(z, within(1e-9));
    }
}
