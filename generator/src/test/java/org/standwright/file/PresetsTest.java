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
import org.standwright.design.kit.Machine;
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
        var read = ReadFile.of(preset, LIBRARY);

        assertThat(read.record()).isInstanceOf(preset.kind().type());
        assertThat(read.json().root().path("note").asText()).isNotBlank();
        assertThat(read.json().root().has("unit")).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"STAND, 2", "MACHINE, 4", "SHEET, 6", "SLIDE, 2", "CASTER, 2", "LEVELER, 1", "PLINTH, 1", "SCREW, 4"})
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
    @CsvSource({"ply-23-32, 0.688, 0.750", "ply-15-32, 0.438, 0.500"})
    void keepsPlywoodWithinTheLimitsOfPs1(String name, double least, double most) {
        assertThat(read(FileKind.SHEET, name, SheetGood.class).material().thickness())
                .isBetween(least * 25.4, most * 25.4);
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

    /** Thread diameters of #6 and #8 wood screws: NDS, appendix L. */
    @ParameterizedTest
    @CsvSource({"screw-8, 0.164", "slide-screw-6, 0.138"})
    void givesNumberedScrewsTheirDiameter(String name, double inches) {
        assertThat(read(FileKind.SCREW, name, Screw.class).diameter()).isCloseTo(inches * 25.4, within(1e-9));
    }

    @Test
    void keepsMachinesWithinTheirEnvelope() {
        for (var preset : LIBRARY.list(FileKind.MACHINE)) {
            var machine = read(FileKind.MACHINE, preset.name(), Machine.class);
            assertThat(machine.base().width())
                    .isLessThanOrEqualTo(machine.envelope().width());
            assertThat(machine.base().depth())
                    .isLessThanOrEqualTo(machine.envelope().depth());
            assertThat(machine.reference().height())
                    .isLessThan(machine.envelope().height());
        }
    }

    @Test
    void standsReadFromTheirOwnFolder() {
        var folder = Path.of("../presets/stands");
        for (var name : Folder.jsonNames(folder)) {
            var library = PresetLibrary.of(folder, Optional.empty());
            assertThat(DesignFiles.read(folder.resolve(name + ".json"), library)
                            .design()
                            .bays())
                    .hasSize(2);
        }
    }

    private static <T> T read(FileKind kind, String name, Class<T> type) {
        return type.cast(
                ReadFile.of(LIBRARY.find(kind, name).orElseThrow(), LIBRARY).record());
    }
}
