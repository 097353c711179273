package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.file.text.DesignFileException;

class BadDesignFilesTest {
    private static final String LENGTHS = "Write it like 876 mm, 87.6 cm, 34 1/2 in, 34-1/2\" or 2' 10 1/2\".";

    static Stream<Arguments> values() {
        return Stream.of(
                bad(
                        "\"layers\": 2",
                        "\"layers\": 3",
                        "line 13, column 15: field \"worktop.layers\" is 3, but must be 1 to 2. The nearest is 2."),
                bad(
                        "\"count\": 3",
                        "\"count\": 0",
                        "line 18, column 56: field \"bays[1].contents[0].count\" is 0, but must be 1 to 20. The nearest is 1."),
                bad(
                        "\"count\": 3",
                        "\"count\": 2.5",
                        "line 18, column 56: field \"bays[1].contents[0].count\" is 2.5, but must be a whole number. Write it without quotes and decimals."),
                bad(
                        "\"900 mm\"",
                        "\"90 mm\"",
                        "line 7, column 20: field \"workingHeight\" is \"90 mm\", but must be 200 mm to 2500 mm. The nearest is 200 mm."),
                bad(
                        "\"900 mm\"",
                        "-900",
                        "line 7, column 20: field \"workingHeight\" is -900 mm, but must be 200 mm to 2500 mm. The nearest is 200 mm."),
                bad(
                        "\"900 mm\"",
                        "1e300",
                        "line 7, column 20: field \"workingHeight\" is 1.0E300 mm, but must be 200 mm to 2500 mm. The nearest is 2500 mm."),
                bad(
                        "\"900 mm\"",
                        "1e999",
                        "line 7, column 20: field \"workingHeight\" is 1e999, but must be a number below 1e308. Look for a digit too many."),
                bad(
                        "\"900 mm\"",
                        "\"900 mn\"",
                        "line 7, column 20: field \"workingHeight\" is \"900 mn\", but must have a unit of length, not 'mn'. "
                                + LENGTHS),
                bad(
                        "\"900 mm\"",
                        "\"35,5 in\"",
                        "line 7, column 20: field \"workingHeight\" is \"35,5 in\", but must be a length. " + LENGTHS
                                + " Use a point for decimals."),
                bad(
                        "\"900 mm\"",
                        "null",
                        "line 7, column 20: field \"workingHeight\" is null, but must be a length or an object. Write it like \"876 mm\" or \"34 1/2 in\"."),
                bad(
                        "\"back\": 0",
                        "\"back\": \"-1 mm\"",
                        "line 14, column 40: field \"worktop.overhang.back\" is \"-1 mm\", but must be 0 mm to 600 mm. The nearest is 0 mm."),
                bad(
                        "{ \"width\": 720, \"depth\": 560 }",
                        "720",
                        "line 8, column 11: field \"plan\" is 720, but must be an object. Put its fields in braces { }."),
                bad(
                        "\"saw\": {",
                        "\"rules\": [{ \"rule\": \"tip-open\", \"waived\": \"ok\" }], \"saw\": {",
                        "line 30, column 45: field \"rules[0].waived\" is \"ok\", but must be at least 15 characters long. Say more, or leave it out."),
                bad(
                        "\"saw\": {",
                        "\"rules\": [{ \"rule\": \"tip-open\", \"waived\": \"                    \" }], \"saw\": {",
                        "line 30, column 45: field \"rules[0].waived\" is \"                    \", but must say in words on one line why. The packet prints it."),
                bad(
                        "[90, \"100 mm\"]",
                        "90",
                        "line 17, column 70: field \"bays[0].contents[0].fronts\" is 90, but must be a list. Put its entries in brackets [ ]."),
                bad(
                        "[90, \"100 mm\"]",
                        "[]",
                        "line 17, column 70: field \"bays[0].contents[0].fronts\" is an empty list, but must hold at least 1. Add one in the brackets [ ]."),
                bad(
                        "[90, \"100 mm\"]",
                        "[90, 30]",
                        "line 17, column 75: field \"bays[0].contents[0].fronts[1]\" is 30 mm, but must be 40 mm to 1000 mm. The nearest is 40 mm."),
                bad(
                        "[90, \"100 mm\"]",
                        "[" + "90,".repeat(20) + "90]",
                        "line 17, column 70: field \"bays[0].contents[0].fronts\" is a list of 21, but must hold at most 20. Leave some out."),
                bad(
                        "\"Test stand\"",
                        "5",
                        "line 4, column 11: field \"name\" is 5, but must be text. Put it in double quotes."),
                bad(
                        "\"Test stand\"",
                        "\" \"",
                        "line 4, column 11: field \"name\" is \" \", but must hold a word. Name it so that it can be found again."),
                bad(
                        "\"Test stand\"",
                        "\"" + "x".repeat(81) + "\"",
                        "line 4, column 11: field \"name\" is \"" + "x".repeat(39)
                                + "…, but must be at most 80 characters long. Put the rest into a \"note\"."),
                bad(
                        "\"unit\": \"mm\"",
                        "\"unit\": \"inch\"",
                        "line 5, column 11: field \"unit\" is \"inch\", but must be \"mm\", \"in\" or \"in/64\". Did you mean \"in\"?"),
                bad(
                        "\"overlay\"",
                        "\"overlap\"",
                        "line 25, column 14: field \"drawers.mount\" is \"overlap\", but must be \"overlay\" or \"inset\". Did you mean \"overlay\"?"),
                bad(
                        "\"overlay\"",
                        "\"half\"",
                        "line 25, column 14: field \"drawers.mount\" is \"half\", but must be \"overlay\" or \"inset\"."));
    }

    static Stream<Arguments> keys() {
        return Stream.of(
                bad(
                        "\"workingHeight\"",
                        "\"workingHeigth\"",
                        "line 7, column 3: field \"workingHeigth\": no such field here. Did you mean \"workingHeight\"?"),
                bad(
                        "  \"workingHeight\": \"900 mm\",\n",
                        "",
                        "line 1, column 1: field \"workingHeight\": missing. Add it (floor to the machine's work surface), written like \"876 mm\" or \"34 1/2 in\"."),
                bad(
                        "\"mount\": \"overlay\",\n",
                        "",
                        "line 20, column 3: field \"drawers.mount\": missing. Add it (how a front meets the carcass), written like \"overlay\" or \"inset\"."),
                bad(
                        "\"trim\": 5",
                        "\"trim\": 5, \"colour\": 1",
                        "line 30, column 36: field \"saw.colour\": no such field here. Use \"note\", \"stages\", \"first\", \"longestRip\", \"longestCrosscut\", \"smallestPiece\" or \"breakDown\"."),
                bad(
                        "\"kerf\": 3.2",
                        "\"kerf\": 0",
                        "line 30, column 20: field \"saw.kerf\" is 0 mm, but must be 0.5 mm to 10 mm. The nearest is 0.5 mm."),
                bad(
                        "\"trim\": 5",
                        "\"trim\": 5, \"kerf\": 3",
                        "line 30, column 36: field \"saw.kerf\": given twice, first in line 30, column 12. Keep one."),
                bad(
                        "\"unit\": \"mm\"",
                        "\"name\": \"x\"",
                        "line 5, column 3: field \"name\": given twice, first in line 4, column 3. Keep one."));
    }

    static Stream<Arguments> kinds() {
        return Stream.of(
                bad(
                        "\"version\": 1",
                        "\"version\": 2",
                        "line 2, column 14: field \"version\" is 2, but must be 1. A newer version of the program may read it."),
                bad(
                        "\"version\": 1",
                        "\"version\": \"1\"",
                        "line 2, column 14: field \"version\" is \"1\", but must be 1. Write \"version\": 1."),
                bad("  \"version\": 1,\n", "", "line 1, column 1: field \"version\": missing. Write \"version\": 1."),
                bad(
                        "\"kind\": \"stand\"",
                        "\"kind\": \"stnad\"",
                        "line 3, column 11: field \"kind\" is \"stnad\", but must be \"stand\" or \"cleat-wall\". Did you mean \"stand\"?"),
                bad(
                        "\"kind\": \"stand\"",
                        "\"kind\": \"sheet\"",
                        "line 3, column 11: field \"kind\" is \"sheet\", but must be \"stand\" or \"cleat-wall\". A file of kind \"sheet\" is a preset: name it in a design file."),
                bad(
                        "  \"kind\": \"stand\",\n",
                        "",
                        "line 1, column 1: field \"kind\": missing. Write \"kind\": \"stand\" or \"cleat-wall\"."),
                bad(
                        "\"kind\": \"casters\"",
                        "\"kind\": \"castors\"",
                        "line 9, column 24: field \"support.kind\" is \"castors\", but must be \"casters\", \"levelers\", \"plinth\" or \"none\". Did you mean \"casters\"?"),
                bad(
                        "\"kind\": \"casters\", ",
                        "",
                        "line 9, column 3: field \"support.kind\": missing. Add it (kind of it), written like \"casters\" or \"levelers\" or \"plinth\" or \"none\"."),
                bad(
                        "\"kind\": \"casters\", \"caster\"",
                        "\"kind\": \"levelers\", \"leveler\"",
                        "line 9, column 47: field \"support.leveler\" is \"caster-100\", but must be the name of a leveler preset. \"caster-100\" is a caster."));
    }

    static Stream<Arguments> presets() {
        return Stream.of(
                bad(
                        "\"birch-6.5\"",
                        "\"birch-65\"",
                        "line 10, column 45: field \"carcass.back\" is \"birch-65\", but must be the name of a sheet preset. Did you mean \"birch-6.5\"?"),
                bad(
                        "\"caster-100\"",
                        "\"wheel\"",
                        "line 9, column 45: field \"support.caster\" is \"wheel\", but must be the name of a caster preset. Use \"caster-100\", \"caster-100-fixed\", \"caster-100-free\", \"caster-125\", \"caster-3-inch\", \"caster-4-inch\", \"caster-4-inch-free\", \"caster-5-inch\" or \"caster-75\"."),
                bad(
                        "\"birch-6.5\"",
                        "\"../birch-6.5\"",
                        "line 10, column 45: field \"carcass.back\" is \"../birch-6.5\", but must be a plain name. Use letters, digits, dots and dashes, without any folder."),
                bad(
                        "\"birch-6.5\"",
                        "{ \"preset\": \"/etc/passwd\" }",
                        "line 10, column 57: field \"carcass.back.preset\" is \"/etc/passwd\", but must be a plain name. Use letters, digits, dots and dashes, without any folder."),
                bad(
                        "\"birch-6.5\"",
                        "6.5",
                        "line 10, column 45: field \"carcass.back\" is 6.5, but must be a preset's name or an object. Name one, such as \"birch-18\"."),
                bad(
                        "\"birch-6.5\"",
                        "{ \"preset\": \"birch-6.5\", \"thikness\": 6 }",
                        "line 10, column 70: field \"carcass.back.thikness\": no such field here. Did you mean \"thickness\"?"),
                bad(
                        "\"birch-6.5\"",
                        "{ \"preset\": \"birch-6.5\", \"thickness\": 0.5 }",
                        "line 10, column 83: field \"carcass.back.thickness\" is 0.5 mm, but must be 2 mm to 60 mm. The nearest is 2 mm."),
                bad(
                        "\"birch-6.5\"",
                        "{ \"preset\": \"birch-6.5\", \"density\": 6.5 }",
                        "line 10, column 81: field \"carcass.back.density\" is 6.5, but must be 100 to 2000. The nearest is 100."),
                bad(
                        "\"birch-6.5\"",
                        "{ \"preset\": \"birch-6.5\", \"price\": 84 }",
                        "line 10, column 79: field \"carcass.back.price\" is 84, but must be an amount with its currency. Write it like \"84.00 EUR\"."),
                bad(
                        "\"birch-6.5\"",
                        "{ \"preset\": \"birch-6.5\", \"price\": \"84 eur\" }",
                        "line 10, column 79: field \"carcass.back.price\" is \"84 eur\", but must be an amount and its currency in three capital letters. Write it like 84.00 EUR."),
                bad(
                        "\"caster-100\"",
                        "{ \"preset\": \"caster-100\", \"brake\": \"yes\" }",
                        "line 9, column 80: field \"support.caster.brake\" is \"yes\", but must be true or false. Write it without quotes."),
                bad(
                        "\"caster-100\"",
                        "{ \"preset\": \"caster-100\", \"rating\": 1 }",
                        "line 9, column 81: field \"support.caster.rating\" is 1 kg, but must be 5 kg to 2000 kg. The nearest is 5 kg."));
    }

    static Stream<Arguments> syntax() {
        return Stream.of(
                bad(
                        "\"version\": 1,",
                        "// a stand\n\"version\": 1,",
                        "line 2, column 3: comments are no part of JSON. Put the words into a \"note\" field."),
                bad(
                        "\"trim\": 5 }",
                        "\"trim\": 5, }",
                        "line 30, column 36: a comma stands before the closing bracket. Take the last comma away."),
                bad(
                        "\"unit\": \"mm\",",
                        "\"unit\": \"mm\"",
                        "line 6, column 3: a comma or a colon is missing before this. Put a comma after each field but the last."),
                bad(
                        "\"unit\": \"mm\",",
                        "\"unit\": \"mm,",
                        "line 5, column 15: a closing quote is missing in this line. Texts end on the line they start on."),
                bad(
                        "\"unit\": \"mm\",",
                        "'unit': 'mm',",
                        "line 5, column 3: this quote is no part of JSON. Use plain double quotes."),
                bad(
                        "\"900 mm\"",
                        "900 mm",
                        "line 7, column 24: this is no JSON. Put words, and quantities with a unit, in double quotes: \"876 mm\"."),
                bad(
                        "\"900 mm\"",
                        "NaN",
                        "line 7, column 20: this is not a number that JSON knows. Write one in digits."),
                bad(
                        "\"900 mm\"",
                        "-Infinity",
                        "line 7, column 20: this is not a number that JSON knows. Write one in digits."),
                bad(
                        "\"trim\": 5 }",
                        "\"trim\": Infinity}",
                        "line 30, column 33: this is not a number that JSON knows. Write one in digits."),
                bad(
                        "\"trim\": 5 }\n}",
                        "\"trim\": 5 }\n",
                        "line 32, column 1: the text ends too early. Close every quote, bracket and brace."),
                bad(
                        "\"trim\": 5 }\n}",
                        "\"trim\": 5 }\n}}",
                        "line 31, column 2: this bracket closes nothing. Give every { its } and every [ its ]."),
                bad(
                        "\"trim\": 5 }\n}",
                        "\"trim\": 5 }\n} {}",
                        "line 31, column 3: there is more after the end. Put everything inside one pair of braces { }."),
                bad(
                        "\"trim\": 5",
                        "\"trim\": " + "[".repeat(70),
                        "line 30, column 95: this is nested deeper than 64 levels. A design needs fewer than 10; look for brackets that are never closed."));
    }

    @ParameterizedTest(name = "{2}")
    @MethodSource({"values", "keys", "kinds", "presets", "syntax"})
    void saysWhereWhatAndWhatInstead(String old, String replacement, String expected) {
        assertThat(refusal(SampleDesign.with(old, replacement))).isEqualTo("stand.json " + expected);
    }

    @Test
    void tellsEverythingThatIsWrongAtOnceInReadingOrder() {
        var text = SampleDesign.TEXT
                .replace("\"layers\": 2", "\"layers\": 7")
                .replace("\"900 mm\"", "\"9 mm\"")
                .replace("\"kerf\"", "\"kref\"")
                .replace("\"slide-45-full\"", "\"slide-46-full\"");

        assertThat(refusal(text).lines().map(line -> line.replaceFirst("^stand.json (line \\d+),.*?: ", "$1: ")))
                .containsExactly(
                        "line 7: field \"workingHeight\" is \"9 mm\", but must be 200 mm to 2500 mm. The nearest is 200 mm.",
                        "line 13: field \"worktop.layers\" is 7, but must be 1 to 2. The nearest is 2.",
                        "line 24: field \"drawers.hang.slide\" is \"slide-46-full\", but must be the name of a slide preset."
                                + " Did you mean \"slide-45-full\"?",
                        "line 30: field \"saw.kref\": no such field here. Did you mean \"kerf\"?");
    }

    @Test
    void saysRangesInTheUnitOfTheFileRoundedInwards() {
        var text = SampleDesign.TEXT
                .replace("\"unit\": \"mm\"", "\"unit\": \"in\"")
                .replace("\"900 mm\"", "5");

        assertThat(refusal(text))
                .contains(
                        "field \"workingHeight\" is 5 in, but must be 7 7/8 in to 98 13/32 in. The nearest is 7 7/8 in.");
    }

    @Test
    void refusesATextThatIsNoObject() {
        assertThat(refusal("[]"))
                .isEqualTo("stand.json line 1, column 1: is an empty list, but must be an object."
                        + " Put everything inside one pair of braces { }.");
    }

    @Test
    void refusesANumberOfMoreThanAThousandDigits() {
        assertThat(refusal(SampleDesign.with("\"900 mm\"", "9".repeat(1001))))
                .isEqualTo("stand.json holds a number or a name that is far too long. Look for a key that got stuck.");
    }

    @Test
    void refusesMoreValuesThanAnyDesignHas() {
        assertThat(refusal(SampleDesign.with("[90, \"100 mm\"]", "[" + "9,".repeat(100_000) + "9]")))
                .contains("there are more than 100000 values. A design needs a few hundred.");
    }

    /** U+202E turns the writing direction round, U+009B begins a terminal's command, U+2028 is a line break. */
    @ParameterizedTest
    @ValueSource(strings = {"\\u202e", "\\u0000", "\\n", "\\u001b[2J", "\\u009b", "\\u2028", "\\u200b", "\\ud800"})
    void refusesNamesThatHoldMoreThanCanBeSeen(String escaped) {
        assertThat(refusal(SampleDesign.with("\"Test stand\"", "\"Test " + escaped + "stand\"")))
                .contains(
                        "field \"name\" is \"Test ",
                        "but must hold no line break, control character or mark of writing direction.")
                .doesNotContainPattern("[\\p{Cc}\\p{Cf}]");
    }

    @Test
    void keepsAStrangeFieldNameOutOfTheMessagesShape() {
        var name = "a\\n\\u001b[2J" + "x".repeat(40_000);

        assertThat(refusal(SampleDesign.with("\"trim\"", "\"" + name + "\"")))
                .isEqualTo(
                        "stand.json line 30, column 25: field \"saw.a??[2J" + "x".repeat(90)
                                + "…\": no such field here. Use \"note\", \"trim\", \"stages\", \"first\", \"longestRip\", \"longestCrosscut\", \"smallestPiece\" or \"breakDown\".");
    }

    @Test
    void refusesAnEmptyText() {
        assertThat(refusal(" \n")).isEqualTo("stand.json is empty. Start with a file from presets/stands.");
    }

    private static String refusal(String text) {
        return catchThrowableOfType(DesignFileException.class, () -> SampleDesign.read(text))
                .getMessage();
    }

    private static Arguments bad(String old, String replacement, String expected) {
        return arguments(old, replacement, expected);
    }
}
