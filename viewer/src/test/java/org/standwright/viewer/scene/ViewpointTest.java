package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;

class ViewpointTest {
    private static final Box3 STAND = new Box3(Vec3.ZERO, new Vec3(720, 580, 790));
    private static final Vec3 CORNER = new Vec3(720, 0, 790);

    private final Viewpoint viewpoint = new Viewpoint();

    @BeforeEach
    void lookAtAStand() {
        viewpoint.resize(1000, 700);
        viewpoint.fit(STAND);
    }

    @ParameterizedTest
    @EnumSource
    void keepsThePointUnderThePointerWhereItIsWhenZooming(Lens lens) {
        viewpoint.lensProperty().set(lens);
        var before = inPicture(CORNER);

        viewpoint.zoom(1.7, CORNER);

        assertSame(inPicture(CORNER), before);
        assertThat(inPicture(Vec3.ZERO)).isNotEqualTo(before);
    }

    @ParameterizedTest
    @EnumSource
    void keepsWhatIsLookedAtInItsSizeWhenTheLensIsChanged(Lens lens) {
        var orbit = new Orbit(Vec3.ZERO, 0, 0, 700);
        viewpoint.orbitProperty().set(orbit);
        viewpoint.lensProperty().set(lens);

        assertSame(inPicture(new Vec3(100, 0, 50)), new Vec2(600, 300));
    }

    @Test
    void showsDepthInPerspectiveOnly() {
        viewpoint.orbitProperty().set(new Orbit(Vec3.ZERO, 0, 0, 700));
        var behind = new Vec3(100, 300, 50);

        assertThat(inPicture(behind).x()).isLessThan(590);
        viewpoint.swapLens();
        assertThat(inPicture(behind).x()).isCloseTo(600, within(0.1));
    }

    @ParameterizedTest
    @EnumSource
    void hasTheWholeStandInThePictureFromEverySide(StandardView view) {
        viewpoint.seeFrom(view, STAND);

        for (int i = 0; i < 8; i++) {
            var at = inPicture(new Vec3((i & 1) * 720, (i >> 1 & 1) * 580, (i >> 2) * 790));
            assertThat(at.x()).isBetween(0.0, 1000.0);
            assertThat(at.y()).isBetween(0.0, 700.0);
        }
    }

    @Test
    void movesWhatIsSeenAlongWithTheHand() {
        var target = viewpoint.orbitProperty().get().target();

        viewpoint.pan(30, 20);

        assertSame(inPicture(target), new Vec2(530, 370));
    }

    @Test
    void findsWhatAPointOfThePictureShows() {
        var sight = viewpoint.sight().getValue();

        assertSame(sight.project(sight.atTarget(120, 450)), new Vec2(120, 450));
        assertSame(sight.project(sight.eye().plus(sight.towards(120, 450).times(0.3))), new Vec2(120, 450));
    }

    @Test
    void knowsWhetherItWasMovedSinceTheLastFit() {
        assertThat(viewpoint.isUntouched()).isTrue();
        viewpoint.turn(1, 0);
        assertThat(viewpoint.isUntouched()).isFalse();
        viewpoint.fit(STAND);
        assertThat(viewpoint.isUntouched()).isTrue();
    }

    private Vec2 inPicture(Vec3 point) {
        return viewpoint.sight().getValue().project(point);
    }

    private static void assertSame(Vec2 found, Vec2 expected) {
        assertThat(found.x()).isCloseTo(expected.x(), within(1e-6));
        assertThat(found.y()).isCloseTo(expected.y(), within(1e-6));
    }
}
