package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.design.StandDesign;
import org.standwright.file.text.DesignFileException;

class PresetLibraryTest {
    @TempDir
    Path home;

    @Test
    void looksBesideTheDesignThenInTheMakersFolderThenInTheProgram() throws IOException {
        assertThat(thickness()).isEqualTo(17.7);

        sheet("own/sheets/birch-18.json", 17.1);
        assertThat(thickness()).isEqualTo(17.1);

        sheet("own/birch-18.json", 17.2);
        assertThat(thickness()).isEqualTo(17.2);

        sheet("designs/sheets/birch-18.json", 17.3);
        assertThat(thickness()).isEqualTo(17.3);

        sheet("designs/birch-18.json", 17.4);
        assertThat(thickness()).isEqualTo(17.4);
    }

    @Test
    void passesByADesignThatHasThePresetsName() throws IOException {
        write("designs/birch-18.json", SampleDesign.TEXT);

        assertThat(thickness()).isEqualTo(17.7);
        assertThat(library().list(FileKind.SHEET)).extracting(Preset::path).containsOnly(Optional.empty());
        assertThat(library().list(FileKind.STAND)).extracting(Preset::name).contains("birch-18", "planer-stand");
    }

    @Test
    void listsWhatIsBesideTheDesignAmongTheOthers() throws IOException {
        sheet("designs/poplar-18.json", 18);
        sheet("own/sheets/oak-19.json", 19);
        write("own/sheets/read me.json", "{}");
        write("designs/settings.json", "{ \"theme\": \"dark\" }");

        assertThat(library().list(FileKind.SHEET))
                .extracting(Preset::name)
                .isSorted()
                .contains("birch-18", "oak-19", "poplar-18")
                .doesNotContain("read me", "settings")
                .doesNotHaveDuplicates();
    }

    @Test
    void tellsWhatIsWrongWithAPresetInItsOwnFile() throws IOException {
        write(
                "designs/sheets/birch-18.json",
                "{ \"version\": 1, \"kind\": \"sheet\", \"name\": \"x\", \"thickness\": 1,"
                        + " \"density\": 685, \"grain\": \"none\", \"length\": 2500 }");

        var file = home.resolve("designs/sheets/birch-18.json");
        assertThatThrownBy(this::design)
                .hasMessage(file + " line 1, column 1: field \"width\": missing. Add it (width across the grain),"
                        + " written like \"876 mm\" or \"34 1/2 in\".\n"
                        + file + " line 1, column 60: field \"thickness\" is 1 mm, but must be 2 mm to 60 mm."
                        + " The nearest is 2 mm.");
    }

    @Test
    void refusesAPresetOfAnotherKindInTheKindsFolder() throws IOException {
        write("designs/sheets/birch-18.json", "{ \"version\": 1, \"kind\": \"screw\" }");

        assertThatThrownBy(this::design)
                .hasMessageEndingWith(
                        "field \"kind\" is \"screw\", but must be \"sheet\". Move the file into a folder \"screws\".");
    }

    @Test
    void refusesABrokenPresetRatherThanTakingTheNextOne() throws IOException {
        write("designs/birch-18.json", "{ \"version\" 1 }");

        assertThatThrownBy(this::design).hasMessageContaining("birch-18.json line 1, column 13: this is no JSON.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", ".", "..", "../birch-18", "sheets/birch-18", "a\\b", "birch 18", ".birch", "~", "birch-18\0"
            })
    void findsNothingUnderAnythingButAPlainName(String name) throws IOException {
        sheet("designs/sheets/birch-18.json", 17);

        assertThat(library().find(FileKind.SHEET, name)).isEmpty();
    }

    @Test
    void tellsCapitalLettersFromSmallOnes() throws IOException {
        sheet("designs/Birch-18.json", 17.5);

        assertThat(library().find(FileKind.SHEET, "birch-18").orElseThrow().path())
                .isEmpty();
        assertThat(library().find(FileKind.SHEET, "Birch-18").orElseThrow().path())
                .isPresent();
    }

    @Test
    void showsAPresetsText() throws IOException {
        assertThat(library().show("plinth/plinth-90"))
                .isEqualTo(Files.readString(Path.of("../presets/plinths/plinth-90.json")));
    }

    @Test
    void saysWhatCanBeShown() {
        assertThatThrownBy(() -> library().show("sheat/birch-18"))
                .hasMessage("preset \"sheat/birch-18\" must start with a kind. Did you mean \"sheet\"?");
        assertThatThrownBy(() -> library().show("sheet/brich-18"))
                .hasMessage("preset \"sheet/brich-18\" is no preset. Did you mean \"sheet/birch-18\"?");
        assertThatThrownBy(() -> library().show("slide/slide-46-full"))
                .hasMessage("preset \"slide/slide-46-full\" is no preset. Did you mean \"slide/slide-45-full\"?");
        assertThatThrownBy(() -> library().show("slide/birch-18"))
                .hasMessage("preset \"slide/birch-18\" is no preset. Did you mean \"sheet/birch-18\"?");
        assertThatThrownBy(() -> library().show("brich-18"))
                .hasMessage("preset \"brich-18\" is no preset. Did you mean \"sheet/birch-18\"?");
        assertThatThrownBy(() -> library().show("wardrobe"))
                .hasMessage("preset \"wardrobe\" is no preset. List them to see what there is.");
    }

    @Test
    void showsWhatItGuesses() {
        assertThat(library().show("slide/slide-45-full")).contains("\"kind\": \"slide\"");
    }

    @Test
    void showsAPresetByItsNameAloneWhenOnlyOneIsCalledSo() throws IOException {
        assertThat(library().show("birch-18")).isEqualTo(library().show("sheet/birch-18"));

        write("designs/slides/birch-18.json", "{}");
        assertThatThrownBy(() -> library().show("birch-18"))
                .hasMessage("preset \"birch-18\" is the name of several. Use \"sheet/birch-18\" or"
                        + " \"slide/birch-18\".");
    }

    @Test
    void refusesAPresetsFolderThatIsNone() {
        var none = home.resolve("none");

        assertThatThrownBy(() -> PresetLibrary.of(home, Optional.of(none)))
                .isInstanceOf(DesignFileException.class)
                .hasMessage(none + " is no folder. Name the folder that holds your presets.");
    }

    private double thickness() throws IOException {
        return design().carcass().sheet().material().thickness();
    }

    private StandDesign design() throws IOException {
        return (StandDesign)
                DesignFiles.parse("stand.json", SampleDesign.TEXT, library()).design();
    }

    private PresetLibrary library() {
        return PresetLibrary.of(
                home.resolve("designs"), Optional.of(home.resolve("own")).filter(Files::isDirectory));
    }

    private void sheet(String file, double thickness) throws IOException {
        write(
                file,
                "{ \"version\": 1, \"kind\": \"sheet\", \"name\": \"Some sheet\", \"thickness\": " + thickness
                        + ", \"density\": 685, \"grain\": \"none\", \"length\": \"2.5 m\", \"width\": 1250 }");
    }

    private void write(String file, String text) throws IOException {
        Files.createDirectories(home.resolve(file).getParent());
        Files.writeString(home.resolve(file), text);
    }
}
