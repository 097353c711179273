package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.design.Hang;
import org.standwright.design.kit.Bar;
import org.standwright.file.text.DesignFileException;
import org.standwright.make.Product;
import org.standwright.part.Colour;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;

/** What sheets and bars look like, as files say it. */
class ColoursTest {
    private static final PresetLibrary LIBRARY = SampleDesign.builtIn();
    private static final String SHEET = "\"sheet\": \"birch-18\"";
    private static final String SLIDES = "{ \"kind\": \"slides\", \"slide\": \"slide-45-full\" }";

    static Stream<Preset> boards() {
        return Stream.concat(LIBRARY.list(FileKind.SHEET).stream(), LIBRARY.list(FileKind.BAR).stream());
    }

    @ParameterizedTest
    @MethodSource("boards")
    void ofEveryBoardAndBarAreThoseOfWood(Preset preset) {
        var read = LIBRARY.read(preset);
        assertThat(read.json().root().has("colour")).isTrue();
        var colour = read.record() instanceof SheetGood sheet
                ? sheet.material().colour()
                : ((Bar) read.record()).material().colour();

        assertThat(colour).hasToString(read.json().root().get("colour").asText());
        assertThat(colour.red()).isGreaterThan(colour.green());
        assertThat(colour.green()).isGreaterThan(colour.blue());
    }

    /** Birch is the palest, fibreboard the darkest: common practice, no source. */
    @Test
    void tellPaleBirchFromBrownFibreboard() {
        assertThat(sheet("birch-18").green()).isGreaterThan(sheet("ply-3-4").green());
        assertThat(sheet("ply-3-4").green()).isGreaterThan(sheet("mdf-18").green());
        assertThat(sheet("mdf-18")).isEqualTo(sheet("mdf-3-4"));
    }

    @Test
    void arePlainWhereTheFileDoesNotSay() {
        var text = SampleDesign.with(
                SHEET,
                "\"sheet\": { \"name\": \"Oak board\", \"thickness\": 18, \"density\": 700, \"grain\": \"none\","
                        + " \"length\": 2000, \"width\": 1000 }");

        assertThat(SampleDesign.stand(text).carcass().sheet().material().colour())
                .isEqualTo(Material.PLAIN);
        for (var kind : new String[] {"sheet", "bar"}) {
            assertThat(DesignSchema.published()
                            .root()
                            .place()
                            .at("/$defs/" + kind + "/properties/colour/default")
                            .asText())
                    .isEqualTo(Material.PLAIN.toString());
        }
    }

    @Test
    void replaceThoseOfAPreset() {
        var text = SampleDesign.with(SHEET, "\"sheet\": { \"preset\": \"birch-18\", \"colour\": \"#5B3A21\" }");
        var kept = SampleDesign.with(SHEET, "\"sheet\": { \"preset\": \"birch-18\", \"price\": \"84.00 EUR\" }");

        assertThat(SampleDesign.stand(text).carcass().sheet().material().colour())
                .isEqualTo(new Colour(0x5b, 0x3a, 0x21));
        assertThat(SampleDesign.stand(kept).carcass().sheet().material().colour())
                .isEqualTo(sheet("birch-18"));
    }

    @Test
    void goFromABarToTheRunnersCutFromIt() {
        var text = SampleDesign.with(
                SLIDES, "{ \"kind\": \"runners\", \"bar\": { \"preset\": \"bar-20x20\", \"colour\": \"#102030\" } }");
        var hang = (Hang.Runners) SampleDesign.stand(text).drawers().hang();

        assertThat(hang.bar().material().colour()).hasToString("#102030");
        assertThat(hang.bar().material().barWidth()).hasValue(20);
    }

    /** Boards of two colours are two things to buy, however alike they are. */
    @Test
    void sortFrontsOfOneColourFromPanelsOfAnother() {
        var text = LIBRARY.find(FileKind.STAND, "planer-stand")
                .orElseThrow()
                .text()
                .replace("\"front\": \"birch-18\"", "\"front\": { \"preset\": \"birch-18\", \"colour\": \"#f4f4f0\" }");
        var product = Product.of(SampleDesign.read(text).design());

        assertThat(product.stops()).isEmpty();
        assertThat(product.plan().materials())
                .extracting(material -> material.material().colour().toString())
                .contains("#e3cda4", "#f4f4f0");
        assertThat(product.solids().solids())
                .filteredOn(placed -> placed.colour().toString().equals("#f4f4f0"))
                .isNotEmpty()
                .allSatisfy(placed -> assertThat(placed.label()).contains("front"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tan", "#d2b48", "d2b48c", ""})
    void areRefusedInAnyOtherForm(String colour) {
        var text = SampleDesign.with(SHEET, "\"sheet\": { \"preset\": \"birch-18\", \"colour\": \"" + colour + "\" }");

        assertThatThrownBy(() -> SampleDesign.read(text))
                .isInstanceOf(DesignFileException.class)
                .hasMessageContaining("field \"carcass.sheet.colour\" is \"" + colour
                        + "\", but must be # and six hexadecimal digits, two each for red, green and blue."
                        + " Write it like #d9b982.");
    }

    @ParameterizedTest
    @CsvSource({"5, 5", "null, null", "[], an empty list"})
    void areRefusedWhereTheyAreNoText(String colour, String shown) {
        var text = SampleDesign.with(SHEET, "\"sheet\": { \"preset\": \"birch-18\", \"colour\": " + colour + " }");

        assertThatThrownBy(() -> SampleDesign.read(text))
                .isInstanceOf(DesignFileException.class)
                .hasMessageContaining(
                        "field \"carcass.sheet.colour\" is " + shown + ", but must be text. Put it in double quotes.");
    }

    private static Colour sheet(String name) {
        var preset = LIBRARY.find(FileKind.SHEET, name).orElseThrow();
        return ((SheetGood) LIBRARY.read(preset).record()).material().colour();
    }
}
