package org.standwright.check.making;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standwright.check.Altered;
import org.standwright.check.Asked;
import org.standwright.check.LoadedStand;
import org.standwright.check.Stands;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Joint;
import org.standwright.geom.Rect;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Part;
import org.standwright.part.Run;

class ThinWebTest {
    private static final ThinWeb RULE = new ThinWeb();

    @Test
    void acceptsHalfOfABoxWallAndALipOfTenMillimetres() {
        assertThat(Asked.of(RULE, Stands.plain(draft -> {})))
                .containsExactly(
                        "FINE drawer 1.1 left side: Under its rabbet 6 mm of wood is left.",
                        "FINE drawer 1.1 left side: Beside its groove 10 mm of wood is left.");
    }

    @Test
    void warnsOfAGrooveThatLeavesLessThanAThird() {
        assertThat(Asked.of(RULE, side(Channel.across(Face.BENCH, 300, 318, width(), 13))))
                .contains("CAUTION left side: Under its dado 5 mm of wood is left.");
    }

    @Test
    void warnsOfDadosFromBothFacesAtOnePlace() {
        var both =
                side(Channel.across(Face.BENCH, 300, 318, width(), 7), Channel.across(Face.SHOW, 310, 328, width(), 7));

        assertThat(Asked.of(RULE, both))
                .contains("CAUTION left side: Between its dado and what is cut from the other face 4 mm of "
                        + "wood is left.");
    }

    @Test
    void acceptsDadosFromBothFacesBesideEachOther() {
        var beside = side(
                Channel.across(Face.BENCH, 300, 318, width(), 7),
                new Channel(Face.SHOW, Run.ACROSS, new Rect(320, 0, 338, 300), 7));

        assertThat(Asked.of(RULE, beside)).noneMatch(words -> words.contains("other face"));
    }

    @Test
    void stopsDadosThatMeet() {
        var through = side(
                Channel.across(Face.BENCH, 300, 318, width(), 10), Channel.across(Face.SHOW, 310, 328, width(), 9));

        assertThat(Asked.of(RULE, through))
                .contains("STOP left side: Between its dado and what is cut from the other face no wood is left.");
    }

    @Test
    void warnsOfALipThatBreaksOff() {
        var lip = side(Channel.along(Face.BENCH, 4, 10, length(), 5));

        assertThat(Asked.of(RULE, lip)).contains("CAUTION left side: Beside its groove 4 mm of wood is left.");
    }

    @Test
    void warnsOfDeepHousingsAndOffersShallowerOnes() {
        var deep = Stands.plain(draft -> draft.carcass =
                new CarcassPlan(Boards.thick(24), draft.carcass.back(), 18, draft.carcass.fit(), new Joint.Housed()));
        var found = RULE.check(Stands.loaded(deep)).get(0);
        var cured = Stands.changed(deep, found.remedies().get(0));

        assertThat(Asked.of(RULE, deep)).first().isEqualTo("CAUTION left side: Under its rabbet 6 mm of wood is left.");
        assertThat(Asked.of(RULE, cured)).allMatch(words -> words.startsWith("FINE"));
    }

    private static LoadedStand side(Channel... channels) {
        return Altered.part(Stands.plain(draft -> {}), "left side", part -> part.with(channels));
    }

    private static double width() {
        return part().width();
    }

    private static double length() {
        return part().length();
    }

    private static Part part() {
        return Stands.loaded(Stands.plain(draft -> {})).stand().assembly().parts().stream()
                .filter(placed -> placed.label().equals("left side"))
                .findFirst()
                .orElseThrow()
                .part();
    }
}
