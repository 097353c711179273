package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.check.Asked;
import org.standwright.check.Stands;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Hang;
import org.standwright.design.Loads;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Bar;
import org.standwright.part.Board;
import org.standwright.part.SheetGood;

class SlideScrewsTest {
    private static final SlideScrews RULE = new SlideScrews();

    @Test
    void carriesADrawerOfCloths() {
        assertThat(Asked.of(RULE, filled(50)))
                .containsExactly(
                        "FINE drawer 1.2: Full and open as far as it goes, it puts 30.8 N on one of the 2 screws that "
                                + "hold its slide to the drawer 1.2 left side, 8.8 mm deep.");
    }

    /**
     * #6 of G 0.42, 8.8 mm deep: 5.3 mm that bear, D l Fe = 2.87 x 5.295 x 23.1 = 351 N, of which it turns at sqrt(2) - 1,
     * 145.4 N (mode II of two equal pieces); over 2.2 and times 0.9 59.5 N (NDS 2018 12.3.1, as quoted; by hand).
     */
    @Test
    void notesADrawerOfTools() {
        assertThat(Asked.of(RULE, filled(500)))
                .containsExactly(
                        "NOTE drawer 1.2: Full and open as far as it goes, it puts 91.2 N on one of the 2 screws that "
                                + "hold its slide to the drawer 1.2 left side, 8.8 mm deep.");
        assertThat(Asked.limit(RULE, Stands.loaded(filled(500)))).isEqualTo("at most 59.5 N");
    }

    @Test
    void warnsOfADrawerOfCoins() {
        assertThat(Asked.of(RULE, filled(2000)))
                .containsExactly(
                        "NOTE drawer 1.2: Full and open as far as it goes, it puts 307.2 N on one of the 2 screws that "
                                + "hold its slide to the drawer 1.2 left side, 8.8 mm deep.");
    }

    /**
     * 357 N of drawer, 266 mm in front of the slide, whose screws are 35, 99 and 460 mm behind its end: 178.5 x (1/3 + (198 +
     * 266) x 163 / 105,014) = 188 N (statics, by hand).
     */
    @Test
    void ratesNoScrewInFibreboard() {
        var fibreboard = Stands.plain(draft -> {
            var carcass = draft.carcass;
            draft.carcass = new CarcassPlan(
                    mdf(carcass.sheet()), carcass.back(), carcass.housing(), carcass.fit(), carcass.joint());
        });

        assertThat(Asked.of(RULE, fibreboard))
                .hasSize(2)
                .last()
                .isEqualTo(
                        "NOTE drawer 1.2: Full and open as far as it goes, it puts 188.2 N on one of the 3 screws that "
                                + "hold its slide to the left side, 14.8 mm deep. Screws in this wood are not rated here: the "
                                + "rating of the slides counts on those that their maker names.");
    }

    @Test
    void asksNothingOfRunners() {
        var runners = Stands.plain(
                draft -> draft.hang(new Hang.Runners(new Bar("bar", 30, 20, 700, 2400, Optional.empty()))));

        assertThat(Asked.of(RULE, runners)).isEmpty();
    }

    private static StandDesign filled(double density) {
        return Stands.plain(draft -> draft.loads = new Loads(density, 195, 750, 150));
    }

    private static SheetGood mdf(SheetGood sheet) {
        return new SheetGood(
                sheet.material().stiff(Board.MDF.usual()),
                sheet.length(),
                sheet.width(),
                sheet.nominal(),
                sheet.price());
    }
}
