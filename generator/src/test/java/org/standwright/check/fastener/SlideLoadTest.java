package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standwright.check.Asked;
import org.standwright.check.Finding;
import org.standwright.check.Stands;
import org.standwright.design.Designs;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Slide;

class SlideLoadTest {
    private static final SlideLoad RULE = new SlideLoad();

    @Test
    void weighsTheHeaviestDrawer() {
        assertThat(Asked.of(RULE, narrow(45)))
                .containsExactly("FINE drawer 1.2: The heaviest drawer weighs 31 kg when it is full, 24.1 kg of it "
                        + "contents, on a pair of slide.");
    }

    @Test
    void stopsWhenItIsHeavierThanItsSlidesMayCarry() {
        assertThat(Asked.of(RULE, narrow(15)))
                .containsExactly("STOP drawer 1.2: The heaviest drawer weighs 31 kg when it is full, 24.1 kg of it "
                        + "contents, on a pair of slide.");
        assertThat(Asked.limit(RULE, Stands.loaded(narrow(15)))).isEqualTo("at most 15 kg");
    }

    @Test
    void notesABoxWiderThanSlidesAreRatedWith() {
        assertThat(Asked.of(RULE, Stands.plain(draft -> {})))
                .containsExactly(
                        "FINE drawer 1.2: The heaviest drawer weighs 36.4 kg when it is full, 28.7 kg of it "
                                + "contents, on a pair of slide.",
                        "NOTE drawer 1.1: Its box is 658 mm wide. Slides are rated with narrower drawers: "
                                + "leave some of the rating unused.");
    }

    @Test
    void offersOneMoreDrawerWhichIsLighter() {
        var found = RULE.check(Stands.loaded(narrow(15))).get(0);
        var lighter = Stands.changed(narrow(15), found.remedies().get(0));

        assertThat(figure(RULE.check(Stands.loaded(lighter)).get(0))).isLessThan(figure(found));
    }

    private static double figure(Finding finding) {
        return finding.gauge().orElseThrow().figure();
    }

    private static StandDesign narrow(double rating) {
        return Stands.plain(draft -> {
            draft.plan(620, 560);
            draft.slide(rated(Designs.slide(), rating));
        });
    }

    private static Slide rated(Slide slide, double rating) {
        return new Slide(
                slide.name(),
                slide.sideSpace(),
                slide.bodyHeight(),
                slide.plate(),
                slide.setBack(),
                slide.rearSpace(),
                rating,
                slide.detent(),
                slide.lengths());
    }
}
