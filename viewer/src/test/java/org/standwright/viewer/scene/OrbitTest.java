package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

class OrbitTest {
    private static final Box3 CUBE = new Box3(Vec3.ZERO, new Vec3(1000, 1000, 1000));
    private static final Orbit FROM_THE_FRONT = new Orbit(Vec3.ZERO, 0, 0, 1000);

    @Test
    void standsInFrontOfTheStandAtNoAngle() {
        assertEye(FROM_THE_FRONT, 0, -1, 0);
    }

    @Test
    void standsOnTheLeftAfterAQuarterTurn() {
        assertEye(FROM_THE_FRONT.turned(90, 0), -1, 0, 0);
    }

    @Test
    void risesWithElevation() {
        assertEye(FROM_THE_FRONT.turned(0, 30), 0, -Math.sqrt(3) / 2, 0.5);
    }

    @Test
    void neverTurnsOverTheTop() {
        assertThat(Orbit.start().turned(0, 500).elevation()).isEqualTo(90);
        assertThat(Orbit.start().turned(0, -500).elevation()).isEqualTo(-90);
    }

    @Test
    void hasTheFarSideOnTopWhenSeenFromAbove() {
        assertSame(FROM_THE_FRONT.seenFrom(StandardView.TOP).up(), new Vec3(0, 1, 0));
    }

    @Test
    void fitsACubeSeenFromTheFrontByItsNearFace() {
        // the near face, 1000 mm high, fills the picture; the target is 500 mm behind it
        var fitted = FROM_THE_FRONT.fitted(CUBE, Lens.PERSPECTIVE, 1);
        double toNearFace = 500 / Lens.PERSPECTIVE.tangent();

        assertThat(fitted.target()).isEqualTo(new Vec3(500, 500, 500));
        assertThat(Lens.PERSPECTIVE.distance(fitted.span())).isCloseTo(1.04 * (toNearFace + 500), within(1e-9));
    }

    @Test
    void fitsAsLargeAsItIsWhenDepthDoesNotCount() {
        assertThat(FROM_THE_FRONT.fitted(CUBE, Lens.PARALLEL, 1).span()).isCloseTo(1040, within(2.0));
        assertThat(FROM_THE_FRONT.fitted(CUBE, Lens.PARALLEL, 0.5).span()).isCloseTo(2080, within(2.0));
    }

    @Test
    void zoomsTowardsAPointByScalingAboutIt() {
        var zoomed = FROM_THE_FRONT.zoomed(2, new Vec3(100, 0, 40));

        assertThat(zoomed).isEqualTo(new Orbit(new Vec3(50, 0, 20), 0, 0, 500));
    }

    @Test
    void staysWhereItIsWhenItCannotZoomAnyFurther() {
        var closest = FROM_THE_FRONT.zoomed(1e9, Vec3.ZERO);

        assertThat(closest.span()).isEqualTo(10);
        assertThat(closest.zoomed(2, new Vec3(100, 0, 0))).isEqualTo(closest);
    }

    @Test
    void movesSidewaysAsSeen() {
        assertSame(FROM_THE_FRONT.turned(90, 0).moved(30, 20).target(), new Vec3(0, -30, 20));
    }

    /** @param x, y, z where the eye is, in distances from the target */
    private static void assertEye(Orbit orbit, double x, double y, double z) {
        assertSame(orbit.eye(Lens.PERSPECTIVE), new Vec3(x, y, z).times(Lens.PERSPECTIVE.distance(orbit.span())));
    }

    private static void assertSame(Vec3 found, Vec3 expected) {
        assertThat(found.x()).isCloseTo(expected.x(), within(1e-9));
        assertThat(found.y()).isCloseTo(expected.y(), within(1e-9));
        assertThat(found.z()).isCloseTo(expected.z(), within(1e-9));
    }
}
