package org.standwright.check.making;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standwright.assembly.Block;
import org.standwright.check.Altered;
import org.standwright.check.Asked;
import org.standwright.check.LoadedStand;
import org.standwright.check.Stands;
import org.standwright.design.Designs;
import org.standwright.design.Hung;
import org.standwright.design.Mount;
import org.standwright.design.column.Mixed;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

class HingeSlideTest {
    private static final HingeSlide RULE = new HingeSlide();

    @Test
    void measuresFromAHingeToTheNearestSlideOrDrawer() {
        var beside = Mixed.stand(Mount.OVERLAY, Designs.bay(Mixed.door(Hung.RIGHT)), Designs.bay(Designs.equal(3)));

        assertThat(Asked.of(RULE, beside))
                .containsExactly("FINE hinge 1 of door 1.1: Nearest to a hinge is drawer 2.3, 10.6 mm away.");
    }

    @Test
    void stopsAHingeInASlide() {
        assertThat(Asked.of(RULE, hinge(Vec3.ZERO)))
                .containsExactly("STOP hinge 1 of door 9.9: It meets slide 1.1 left.");
    }

    @Test
    void stopsAHingeInTheWayOfADrawer() {
        assertThat(Asked.of(RULE, hinge(new Vec3(14, -400, 0))))
                .containsExactly("STOP hinge 1 of door 9.9: It meets drawer 1.1.");
    }

    @Test
    void warnsOfAHingeThatTouches() {
        assertThat(Asked.of(RULE, hinge(new Vec3(0, 0, 45))))
                .containsExactly("CAUTION hinge 1 of door 9.9: Nearest to a hinge is slide 1.1 left, 0 mm away.");
    }

    @Test
    void asksNothingWithoutDoors() {
        assertThat(Asked.of(RULE, Stands.plain(draft -> {}))).isEmpty();
    }

    /** One as large as a slide, this far from its place. */
    private static LoadedStand hinge(Vec3 away) {
        var plain = Stands.plain(draft -> {});
        var slide = Stands.loaded(plain).stand().assembly().blocks().stream()
                .filter(block -> block.kind() == Block.Kind.SLIDE)
                .findFirst()
                .orElseThrow()
                .box();
        var box = new Box3(slide.min().plus(away), slide.max().plus(away));
        return Altered.block(plain, new Block("hinge 1 of door 9.9", Block.Kind.HINGE, box));
    }
}
