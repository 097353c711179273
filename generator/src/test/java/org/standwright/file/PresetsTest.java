package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.Connector;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Screw;
import org.standwright.design.kit.Slide;
import org.standwright.file.text.Folder;
import org.standwright.part.SheetGood;

class PresetsTest {
    private static final PresetLibrary LIBRARY = SampleDesign.builtIn();

    static Stream<Preset> all() {
        return Arrays.stream(FileKind.values()).flatMap(kind -> LIBRARY.list(kind).stream());
    }

    @ParameterizedTest
    @MethodSource("all")
    void isReadAndSaysInANoteWhereItsFiguresComeFrom(Preset preset) {
        var read = LIBRARY.read(preset);

        assertThat(read.record()).isInstanceOf(preset.kind().type());
        assertThat(read.json().root().path("note").asText()).isNotBlank();
        assertThat(read.json().root().has("unit")).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "STAND, 2",
        "MACHINE, 14",
        "SHEET, 12",
        "SLIDE, 6",
        "CASTER, 8",
        "LEVELER, 3",
        "PLINTH, 2",
        "SCREW, 6",
        "BAR, 2",
        "EDGING, 5",
        "HINGE, 5",
        "PULL, 4",
        "DOWEL, 3",
        "CONNECTOR, 1"
    })
    void comesInEveryKind(FileKind kind, int atLeast) {
        assertThat(LIBRARY.list(kind)).hasSizeGreaterThanOrEqualTo(atLeast);
    }

    @Test
    void carriesNoFileInAFolderOfAnotherKind() {
        var files = Arrays.stream(FileKind.values())
                .flatMap(kind -> Folder.jsonNames(Path.of("../presets", kind.folder())).stream())
                .toList();

        assertThat(files).hasSameSizeAs(all().toList()).doesNotHaveDuplicates();
    }

    /**
     * Masses of whole sheets. Birch: 36.704 kg for 1.22 x 2.44 m at 18 mm is a data sheet's figure, here at the measured
     * thickness and mill size; softwood 4 x 8 ft: 69.0 lb = 31.298 kg at 36 lb/ft³ (panel design specification).
     */
    @ParameterizedTest
    @CsvSource({"birch-18, 37.89", "ply-23-32, 31.298"})
    void givesSheetsTheMassThatDataSheetsGive(String name, double kg) {
        var sheet = read(FileKind.SHEET, name, SheetGood.class);
        double cubicMetres = sheet.length() * sheet.width() * sheet.material().thickness() / 1e9;

        assertThat(cubicMetres * sheet.material().density()).isCloseTo(kg, within(0.02));
    }

    /** US Product Standard PS 1, performance categories: limits in inches. */
    @ParameterizedTest
    @CsvSource({
        "ply-3-8, 0.344, 0.406",
        "ply-15-32, 0.438, 0.500",
        "ply-1-2, 0.469, 0.531",
        "ply-19-32, 0.563, 0.625",
        "ply-23-32, 0.688, 0.750",
        "ply-3-4, 0.719, 0.781"
    })
    void keepsPlywoodWithinTheLimitsOfPs1(String name, double least, double most) {
        assertThat(read(FileKind.SHEET, name, SheetGood.class).material().thickness())
                .isBetween(least * 25.4, most * 25.4);
    }

    /** Measured means of a birch data sheet: for 18 mm, 17.7 mm. */
    @ParameterizedTest
    @CsvSource({
        "birch-6.5, 6.4",
        "birch-9, 9.2",
        "birch-12, 12.0",
        "birch-12-5x5, 12.0",
        "birch-15, 14.9",
        "birch-18, 17.7",
        "birch-18-5x5, 17.7",
        "birch-21, 20.5",
        "birch-24, 23.4"
    })
    void givesBirchTheThicknessThatADataSheetMeasured(String name, double mean) {
        assertThat(read(FileKind.SHEET, name, SheetGood.class).material().thickness())
                .isEqualTo(mean);
    }

    /** A slide maker's help page asks for 12.9 to 13.2 mm per side; 37 mm to the first hole is the 32 mm system. */
    @Test
    void placesSlidesAsTheirMakersAsk() {
        for (var preset : LIBRARY.list(FileKind.SLIDE)) {
            var slide = read(FileKind.SLIDE, preset.name(), Slide.class);
            assertThat(slide.sideSpace()).isBetween(12.9, 13.2);
            assertThat(slide.setBack() + slide.lengths().get(0).cabinetHoles().get(0))
                    .isCloseTo(37, within(0.1));
        }
    }

    @Test
    void keepsEveryScrewHoleOnItsSlide() {
        for (var preset : LIBRARY.list(FileKind.SLIDE)) {
            for (var size : read(FileKind.SLIDE, preset.name(), Slide.class).lengths()) {
                for (var holes : List.of(size.cabinetHoles(), size.boxHoles())) {
                    assertThat(holes).isSorted().hasSizeGreaterThanOrEqualTo(3);
                    assertThat(holes.get(holes.size() - 1)).isLessThan(size.length() - 20);
                }
            }
        }
    }

    /** Thread diameters of #6, #8 and #10 wood screws: NDS, appendix L. */
    @ParameterizedTest
    @CsvSource({"screw-8, 0.164", "slide-screw-6, 0.138", "screw-10, 0.190"})
    void givesNumberedScrewsTheirDiameter(String name, double inches) {
        assertThat(read(FileKind.SCREW, name, Screw.class).diameter()).isCloseTo(inches * 25.4, within(1e-9));
    }

    /** Wheels of 75 to 125 mm, and 25 to 35 mm more to the top of the plate: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "caster-75, 75",
        "caster-100, 100",
        "caster-100-free, 100",
        "caster-100-fixed, 100",
        "caster-125, 125",
        "caster-3-inch, 76.2",
        "caster-4-inch, 101.6",
        "caster-4-inch-free, 101.6",
        "caster-5-inch, 127"
    })
    void givesCastersTheHeightOfTheirWheelAndFork(String name, double wheel) {
        var caster = read(FileKind.CASTER, name, Caster.class);

        assertThat(caster.height() - wheel).isBetween(25.0, 35.0);
        assertThat(caster.brake()).isEqualTo(!name.endsWith("free") && !name.endsWith("fixed"));
    }

    @Test
    void keepsBoltsOnEveryCastersPlate() {
        for (var preset : LIBRARY.list(FileKind.CASTER)) {
            var caster = read(FileKind.CASTER, preset.name(), Caster.class);
            double edge = 2 * caster.holeDiameter();
            assertThat(caster.holes().width() + edge)
                    .isLessThanOrEqualTo(caster.plate().width() + 1e-9);
            assertThat(caster.holes().depth() + edge)
                    .isLessThanOrEqualTo(caster.plate().depth() + 1e-9);
            assertThat(caster.holeDiameter()).isGreaterThan(caster.bolt());
        }
    }

    /** The bores of a connecting screw of 7 x 50 mm that several guides give. */
    @Test
    void boresConnectorsInSteps() {
        assertThat(read(FileKind.CONNECTOR, "connector-7x50", Connector.class))
                .isEqualTo(new Connector("Connecting screw 7 x 50 mm", 50, 5, 7, 10, 4));
    }

    /** Plates of concealed hinges: the 32 mm system, from the carcass's front edge or from the back of an inset door. */
    @ParameterizedTest
    @ValueSource(strings = {"hinge-35-overlay", "hinge-35-half-overlay", "hinge-35-inset"})
    void screwsHingePlatesToThe32MillimetreSystem(String name) {
        var hinge = read(FileKind.HINGE, name, Hinge.Concealed.class);

        assertThat(hinge.plateSetBack()).isEqualTo(37);
        assertThat(hinge.plateSpacing()).isEqualTo(32);
        assertThat(hinge.depth()).isGreaterThan(hinge.plateSetBack());
        assertThat(hinge.cupFromEdge()).isGreaterThan(hinge.cup() / 2);
    }

    @Test
    void standsReadFromTheirOwnFolder() {
        var folder = Path.of("../presets/stands");
        for (var name : Folder.jsonNames(folder)) {
            var library = PresetLibrary.of(folder, Optional.empty());
            var read = DesignFiles.read(folder.resolve(name + ".json"), library);
            assertThat(((StandDesign) read.design()).bays()).isNotEmpty();
        }
    }

    private static <T> T read(FileKind kind, String name, Class<T> type) {
        return type.cast(LIBRARY.read(LIBRARY.find(kind, name).orElseThrow()).record());
    }
}
