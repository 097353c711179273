package org.standwright.design.wall.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.wall.place.Scene.area;

import org.junit.jupiter.api.Test;
import org.standwright.design.wall.Spot;
import org.standwright.design.wall.built.Backing;
import org.standwright.design.wall.built.Backing.By;
import org.standwright.geom.Interval;

/** Strips reach from their row's height 88 mm down; a holder is lifted 21 mm, a spacer is 40 mm high. */
class BackingTest {
    private static Backing backing(double below, double lowerRow, double lowerStripTo) {
        var scene = new Scene();
        scene.wall("north", 1000, 2400)
                .row(lowerRow, new Interval(0, lowerStripTo))
                .row(1500, new Interval(0, 1000));
        scene.holder("rack", area(400, below, 80), 100, new Spot("north", 2, 0));
        return scene.arranged().hung().get(0).backing();
    }

    @Test
    void aShortBackTouchesItsOwnStripDownToItsBottom() {
        assertThat(backing(60, 1200, 1000)).isEqualTo(new Backing(By.OWN_STRIP, 60));
    }

    @Test
    void aBackTooShortForASpacerTouchesItsOwnStripDownToThatsEdge() {
        assertThat(backing(148, 1200, 1000)).isEqualTo(new Backing(By.OWN_STRIP, 88));
    }

    @Test
    void aSpacerFitsWhereItStaysBelowItsOwnStripWhenLifted() {
        // 88 + 40 + 21 = 149
        assertThat(backing(149, 1200, 1000)).isEqualTo(new Backing(By.SPACER, 149));
    }

    @Test
    void aBackThatReachesALowerStripLiesOnIt() {
        assertThat(backing(310, 1200, 1000)).isEqualTo(new Backing(By.LOWER_STRIP, 310));
        assertThat(backing(500, 1200, 1000)).isEqualTo(new Backing(By.LOWER_STRIP, 388));
    }

    @Test
    void aBackThatHardlyReachesALowerStripHasNoRoomForASpacer() {
        assertThat(backing(309, 1200, 1000)).isEqualTo(new Backing(By.OWN_STRIP, 88));
    }

    @Test
    void aLowerStripUnderLessThanHalfOfTheBackDoesNotBearIt() {
        assertThat(backing(350, 1200, 200).by()).isEqualTo(By.LOWER_STRIP);
        assertThat(backing(350, 1200, 199)).isEqualTo(new Backing(By.OWN_STRIP, 88));
    }
}
