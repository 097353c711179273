package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.file.DesignFiles;
import org.standwright.make.Product;

/** The planer stand with other boards, another saw or wishes for its cutting: what is refused, and the way out. */
class ImpossibleStockTest {
    private static final ChangedDesign PLANER = ChangedDesign.of("planer-stand");
    private static final String SMALL = "\"sheet\": \"birch-18\", \"length\": \"700 mm\", \"width\": \"700 mm\"";

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        { "/stock/sheets": [{ "sheet": "birch-21" }] } | /stock/sheets/0/sheet | No part is cut from Birch plywood 21 mm. Name one of the sheets that parts are cut from: 'Birch plywood 18 mm', 'Birch plywood 6.5 mm', 'Birch plywood 12 mm'.
        { "/stock/sheets": [{ "sheet": { "preset": "birch-18", "thickness": "17.5 mm" } }] } | /stock/sheets/0/sheet | No part is cut from Birch plywood 18 mm as it is described here. Name the sheet
        { "/stock/sheets": [{ "sheet": "birch-18" }, { "sheet": "birch-12" }, { "sheet": "birch-18", "count": 2 }] } | /stock/sheets/2 | Boards called 'Birch plywood 18 mm' stand in the stock twice.
        { "/stock/sheets": [{ "sheet": "birch-18", "price": "94 EUR" }, { "sheet": "birch-18", "name": "large", "price": "99 USD" }] } | /stock/sheets/0/price | Boards of Birch plywood 18 mm have prices in two currencies, EUR and USD, which cannot be compared. Write all of them in one currency.
        { "/cutting/anyGrain": ["drawer bottoms"] } | /cutting/anyGrain/0 | No kind of part of this stand is called 'drawer bottoms'. There are 'caster block lower', 'caster block upper', 'side',
        { "/cutting/together": [{ "kind": "one-sheet", "parts": ["left side", "rigth side"] }] } | /cutting/together/0/parts/1 | No part of this stand is called 'rigth side'.
        { "/cutting/together": [{ "kind": "one-sheet", "parts": ["left side"] }] } | /cutting/together/0/parts | Part 'left side' alone has nothing to be kept together with.
        { "/cutting/together": [{ "kind": "one-sheet", "parts": ["side", "back"] }] } | /cutting/together/0 | Parts 'left side' and 'back' are of Birch plywood 18 mm and Birch plywood 6.5 mm
        { "/cutting/together": [{ "kind": "one-strip", "parts": ["bottom", "partition", "side"] }] } | /cutting/together/0 | Parts 'bottom' and 'left side' are cut 696.6 mm x 553.6 mm and 601.2 mm x 560 mm
        { "/cutting/together": [{ "kind": "one-sheet", "parts": ["side"] }, { "kind": "one-sheet", "parts": ["left side", "partition"] }] } | /cutting/together/1 | Part 'left side' belongs to two blocks
        { "/cutting/together": [{ "kind": "one-strip", "parts": ["worktop upper layer", "sub-top", "bottom"] }] } | /cutting/together/0 | Parts 'worktop upper layer' and 'sub-top' are cut
        """)
    void refusesAtTheFieldToChange(String changes, String field, String message) {
        var refused = PLANER.with(changes).refusal();

        assertThat(refused.getMessage()).startsWith(message);
        assertThat(refused.field()).isEqualTo(field);
    }

    @Test
    void namesTheNearestOfSeveralBoardsAndWhatWouldDo() {
        var refused = PLANER.with("{ \"/stock/sheets\": [{ " + SMALL + " }] }").refusal();

        assertThat(refused.field()).isEqualTo("/plan/width");
        assertThat(refused)
                .hasMessageContaining(
                        "larger than a sheet of Birch plywood 18 mm, 700 mm x 700 mm after trimming (690 mm x 690 mm)")
                .hasMessageContaining("Or use a sheet 736 mm long and 596 mm wide or more.");
        assertThat(PLANER.with("{ \"/stock/sheets\": [{ " + SMALL
                                + " }, { \"sheet\": \"birch-18\", \"length\": \"736 mm\", \"width\": \"596 mm\" }] }")
                        .stand())
                .isNotNull();
    }

    @Test
    void saysThatAPartWouldFitTurned() {
        var narrow =
                "{ \"/stock/sheets\": [{ \"sheet\": \"birch-6.5\", \"length\": \"640 mm\", \"width\": \"720 mm\" }] }";
        var refused = PLANER.with(narrow).refusal();

        assertThat(refused)
                .hasMessageStartingWith("Part 'back' is cut 696.6 mm x 601.2 mm")
                .hasMessageEndingWith("Or let its grain run either way: name 'back' in \"anyGrain\" of \"cutting\".");
        assertThat(PLANER.with(narrow)
                        .with("{ \"/cutting/anyGrain\": [\"back\"] }")
                        .stand())
                .isNotNull();
    }

    @Test
    void refusesMatchedFrontsThatAreLargerThanASheet() {
        var refused = PLANER.with("""
                        { "/drawers/matched": true,
                          "/stock/sheets": [{ "sheet": "birch-18", "width": "600 mm" }] }""").refusal();

        assertThat(refused.field()).isEqualTo("/drawers/matched");
        assertThat(refused)
                .hasMessageStartingWith("Parts 'drawer 1.1 front' to 'drawer 1.4 front' cut as one strip are"
                        + " 423.6 mm x 595.8 mm, larger than a sheet of Birch plywood 18 mm, 2500 mm x 600 mm")
                .hasMessageEndingWith("Cut them one by one, or use a sheet 434 mm long and 606 mm wide or more.");
    }

    /** What only the planner can know becomes a refusal of the design. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        { "/stock/sheets": [{ "sheet": "birch-18", "count": 1 }] } | /stock/sheets | the boards of 'Birch plywood 18 mm' that are there have
        { "/saw": { "longestRip": "1000 mm", "longestCrosscut": "900 mm" } } | /saw | a board of 'Birch plywood 18 mm' is 2500.00 x 1250.00 mm before its edges are trimmed
        { "/stock/sheets": [{ "sheet": "birch-18", "thickness": "17.0 mm", "count": 5 }] } | /stock/sheets/0/thickness | Board 'Birch plywood 18 mm' is 17 mm thick, but the design counts on 17.7 mm and takes boards between 17.35 mm and 17.85 mm
        { "/stock/sheets": [{ "sheet": "birch-18", "name": "rest", "thickness": "19 mm", "atHand": true }] } | /stock/sheets/0/thickness | Board 'rest' is 19 mm thick
        { "/stock/sheets": [{ "sheet": "birch-18", "length": "100 mm", "width": "100 mm", "atHand": true }], "/saw/trim": "50 mm" } | /saw/trim | trim of 50.0 and 50.0 mm leaves nothing of a side of 100.0 mm
        """)
    void refusesWhatNoPlanCanDo(String changes, String field, String message) {
        var design = DesignFiles.parse("stand", PLANER.with(changes).file().toString(), Presets.shipped())
                .design();

        var refused = catchThrowableOfType(ImpossibleDesignException.class, () -> Product.of(design));

        assertThat(refused.getMessage()).startsWith(message);
        assertThat(refused.field()).isEqualTo(field);
    }
}
