package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.design.CuttingPlan;
import org.standwright.design.FrontGrain;
import org.standwright.design.KeptTogether;
import org.standwright.design.StandDesign;
import org.standwright.design.StockPlan;
import org.standwright.design.kit.BreakDown;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Trim;
import org.standwright.file.text.DesignFileException;
import org.standwright.unit.Money;

/** What a design file says about boards, the saw and what stays together. */
class StockFilesTest {
    private static final String SAW = "\"saw\": { \"kerf\": 3.2, \"trim\": 5 }";

    @Test
    void asksNothingByItself() {
        var design = design(SAW);

        assertThat(design.stock()).isEqualTo(StockPlan.NONE);
        assertThat(design.cutting()).isEqualTo(CuttingPlan.PLAIN);
        assertThat(design.drawers().frontGrain()).isEqualTo(FrontGrain.LEVEL);
        assertThat(design.drawers().matched()).isFalse();
    }

    @Test
    void readsBoardsToBuyAndAtHand() {
        var design = design(SAW + """
                , "stock": {
                  "keep": { "length": "400 mm" },
                  "sheets": [
                    { "sheet": "birch-18", "length": "1525 mm", "width": 1525, "count": 2, "price": "81.50 EUR" },
                    { "sheet": "birch-12", "name": "rest", "thickness": "11.9 mm", "atHand": true }
                  ]
                }""");

        assertThat(design.stock().keep()).isEqualTo(new Keep(400, 100));
        var bought = design.stock().sheets().get(0);
        assertThat(bought.sheet().material().name()).isEqualTo("Birch plywood 18 mm");
        assertThat(bought.length()).hasValue(1525);
        assertThat(bought.count()).hasValue(2);
        assertThat(bought.price()).contains(Money.parse("81.50 EUR"));
        assertThat(bought.atHand()).isFalse();
        var rest = design.stock().sheets().get(1).board(design.unit());
        assertThat(rest.name()).isEqualTo("rest");
        assertThat(rest.count()).hasValue(1);
        assertThat(rest.thickness()).isEqualTo(11.9);
        assertThat(rest.isBought()).isFalse();
    }

    @Test
    void readsEverythingThatASawCanDo() {
        var design = design("""
                "saw": {
                  "kerf": 3,
                  "trim": { "all": 4, "left": 12, "top": "1/2 in" },
                  "stages": 3,
                  "first": "crosscut",
                  "longestRip": 1300,
                  "longestCrosscut": "70 cm",
                  "smallestPiece": 150,
                  "breakDown": { "kerf": 2.4 }
                }""");

        assertThat(design.saw())
                .isEqualTo(new Saw(
                        3,
                        new Trim(12, 4, 4, 12.7),
                        OptionalInt.of(3),
                        Saw.First.CROSSCUT,
                        OptionalDouble.of(1300),
                        OptionalDouble.of(700),
                        150,
                        Optional.of(new BreakDown(2.4, 5))));
    }

    @Test
    void readsOneTrimForAllEdges() {
        assertThat(design("\"saw\": { \"trim\": \"1/4 in\" }").saw().trim()).isEqualTo(Trim.all(6.35));
        assertThat(design("\"saw\": { \"trim\": { \"right\": 0 } }").saw().trim())
                .isEqualTo(new Trim(5, 0, 5, 5));
        assertThat(design("\"saw\": { \"breakDown\": {} }").saw().breakDown()).contains(new BreakDown(2.2, 5));
    }

    @Test
    void readsWhatStaysTogether() {
        var design = design(SAW + """
                , "cutting": {
                  "anyGrain": ["drawer bottom"],
                  "together": [
                    { "kind": "one-strip", "parts": ["left side", "right side"] },
                    { "kind": "one-sheet", "parts": ["drawer front"] },
                    { "kind": "one-blank", "parts": ["caster block lower"], "over": "8 mm" }
                  ]
                }""");

        assertThat(design.cutting())
                .isEqualTo(new CuttingPlan(
                        List.of("drawer bottom"),
                        List.of(
                                new KeptTogether.OneStrip(List.of("left side", "right side")),
                                new KeptTogether.OneSheet(List.of("drawer front")),
                                new KeptTogether.OneBlank(List.of("caster block lower"), 8))));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        "saw": { "kerf": -1 } | field "saw.kerf" is -1 mm, but must be 0.5 mm to 10 mm. The nearest is 0.5 mm.
        "saw": { "kerf": 0 } | field "saw.kerf" is 0 mm, but must be 0.5 mm to 10 mm. The nearest is 0.5 mm.
        "saw": { "stages": 4 } | field "saw.stages" is 4, but must be one of the numbers 2, 3.
        "saw": { "first": "cross" } | field "saw.first" is "cross", but must be "rip", "crosscut" or "either".
        "saw": { "trim": true } | field "saw.trim" is true, but must be a length or an object. Write it like "876 mm" or "34 1/2 in".
        "saw": { "trim": { "all": 61 } } | field "saw.trim.all" is 61 mm, but must be 0 mm to 60 mm. The nearest is 60 mm.
        "stock": { "sheets": [{ "sheet": "birch-18", "count": 0 }] } | field "stock.sheets[0].count" is 0, but must be 1 to 1000. The nearest is 1.
        "stock": { "sheets": [{ "sheet": "birch-18", "count": 99999999999 }] } | field "stock.sheets[0].count" is 99999999999, but must be 1 to 1000. The nearest is 1000.
        "stock": { "sheets": [{ "count": 1 }] } | field "stock.sheets[0].sheet": missing. Add it (a board as it is bought
        "stock": { "sheets": [{ "sheet": "birch-18", "atHand": "yes" }] } | field "stock.sheets[0].atHand" is "yes", but must be true or false. Write it without quotes.
        "stock": { "sheets": [{ "sheet": "birch-18", "atHand": true, "price": "9 EUR" }] } | A board of 'Birch plywood 18 mm' is at hand and has a price of 9 EUR
        "cutting": { "together": [{ "kind": "one-strip", "parts": [] }] } | field "cutting.together[0].parts" is an empty list, but must hold at least 1.
        "cutting": { "together": [{ "kind": "one-strip", "parts": ["side"], "over": 5 }] } | field "cutting.together[0].over": no such field here.
        """)
    void saysWhatIsWrong(String replacement, String message) {
        assertThat(catchThrowableOfType(DesignFileException.class, () -> design(replacement)))
                .hasMessageContaining(message);
    }

    private static StandDesign design(String instead) {
        return SampleDesign.stand(SampleDesign.with(SAW, instead));
    }
}
