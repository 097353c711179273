package org.standwright.file.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.Design;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.Preset;
import org.standwright.file.PresetLibrary;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.Pointer;

class FormTest {
    private static final PresetLibrary LIBRARY = PresetLibrary.of(Path.of("no-such-folder"), Optional.empty());
    private static final String STAND =
            LIBRARY.find(FileKind.STAND, "planer-stand").orElseThrow().text();

    private final Presets presets = new Presets(LIBRARY);

    static Stream<Preset> designs() {
        return Stream.of(FileKind.STAND, FileKind.CLEAT_WALL).flatMap(kind -> LIBRARY.list(kind).stream());
    }

    static Stream<Preset> aStandAndAWall() {
        return Stream.of(FileKind.STAND, FileKind.CLEAT_WALL)
                .map(kind -> LIBRARY.list(kind).get(0));
    }

    @ParameterizedTest
    @MethodSource("designs")
    void hasOneRowForEachValueOfEachPresetAsItIsWritten(Preset preset) {
        var values = new TreeMap<String, String>();
        collect(JsonValue.of(preset.text()), "", values);
        var shown = new ArrayList<String>();
        givenValues(Form.of(preset.text(), presets))
                .forEach(row -> shown.add(row.pointer() + "=" + row.written().orElseThrow()));

        assertThat(shown)
                .containsExactlyInAnyOrderElementsOf(values.entrySet().stream()
                        .map(value -> value.getKey() + "=" + value.getValue())
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("designs")
    void changesNothingWhereTheSameValueIsSet(Preset preset) {
        var file = JsonValue.of(preset.text());

        givenValues(Form.of(preset.text(), presets)).forEach(row -> {
            var change = row.set(row.json().orElseThrow());
            assertThat(JsonValue.of("[" + change.json() + "]").get(0)).isEqualTo(file.at(change.pointer()));
        });
    }

    @ParameterizedTest
    @MethodSource("aStandAndAWall")
    void addsEveryFieldThatIsLeftOutWhereTheReaderFindsIt(Preset preset) {
        everyRow(Form.of(preset.text(), presets))
                .filter(row -> !row.isGiven() && row.input() != Input.PRESET_NAME && !row.isChooser())
                .forEach(row -> {
                    var added = Form.of(applied(preset.text(), row.add()), presets);
                    assertThat(along(added, row.path())).as(row.toString()).matches(Row::isGiven);
                });
    }

    @ParameterizedTest
    @MethodSource("designs")
    void opensEveryPresetThatIsNamedAsFieldsThatMeanTheSame(Preset preset) {
        var named = everyRow(Form.of(preset.text(), presets))
                .filter(row -> row.writeOut().isPresent())
                .toList();

        assertThat(named).isNotEmpty();
        var before = design(preset.text());
        named.forEach(
                row -> assertThat(design(applied(preset.text(), row.writeOut().orElseThrow())))
                        .as(row.toString())
                        .isEqualTo(before));
    }

    @Test
    void labelsFieldsInPlainWords() {
        var stand = Form.of(STAND, presets);

        assertThat(stand.row("workingHeight")).map(Row::label).contains("Working height");
        assertThat(stand.row("workingHeight")).map(Row::description).contains("floor to the machine's work surface");
        assertThat(at(stand, "/bays/0").label()).isEqualTo("Bay 1");
    }

    @Test
    void turnsABareHeightIntoAnObjectWhenItIsFoundAnotherWay() {
        var file = "{ \"version\": 1, \"kind\": \"stand\", \"workingHeight\": \"34 1/2 in\" }";
        var kind = at(Form.of(file, presets), "/workingHeight/kind");

        assertThat(kind.standard()).contains("given");
        var change = kind.choose("\"elbow\"");
        assertThat(change.pointer()).isEqualTo("/workingHeight");
        assertThat(change.json())
                .startsWith("{ \"kind\": \"elbow\", \"elbow\": \"")
                .endsWith("\"work\": \"precise\" }");
        var back = at(Form.of(applied(file, change), presets), "/workingHeight/kind")
                .choose("\"given\"");
        assertThat(back.json()).startsWith("\"").endsWith(" mm\"");
    }

    @Test
    void keepsWhatBothMembersOfAFamilyHave() {
        var file = """
                { "version": 1, "kind": "stand",
                  "support": { "note": "as found", "kind": "casters", "caster": "caster-100", "bed": "doubled-bottom" } }
                """;

        assertThat(at(Form.of(file, presets), "/support/kind")
                        .choose("\"levelers\"")
                        .json())
                .isEqualTo("{ \"kind\": \"levelers\", \"note\": \"as found\", \"bed\": \"doubled-bottom\","
                        + " \"leveler\": \"leveler-m10\" }");
    }

    @Test
    void writesWhatIsAroundAFieldThatIsLeftOut() {
        var file = "{ \"version\": 1, \"kind\": \"stand\", \"saw\": { \"trim\": \"6 mm\" } }";
        var stand = Form.of(file, presets);

        assertThat(at(stand, "/place/margins/front").set("\"20 mm\""))
                .isEqualTo(new Change("/place", "{ \"margins\": { \"front\": \"20 mm\" } }"));
        assertThat(at(stand, "/saw/trim/left").set("0"))
                .isEqualTo(new Change("/saw/trim", "{ \"all\": \"6 mm\", \"left\": 0 }"));
        assertThat(at(stand, "/saw/kerf").set("\"2 mm\"")).isEqualTo(new Change("/saw/kerf", "\"2 mm\""));
    }

    @Test
    void replacesAFieldOfAPresetBesideItsName() {
        var file = "{ \"version\": 1, \"kind\": \"stand\", \"machine\": \"thickness-planer\" }";
        var mass = at(Form.of(file, presets), "/machine/mass");

        assertThat(mass.standard()).isPresent();
        assertThat(mass.set("\"41 kg\""))
                .isEqualTo(new Change("/machine", "{ \"preset\": \"thickness-planer\", \"mass\": \"41 kg\" }"));
    }

    @Test
    void takesTheWholeOfAPresetsObjectAlongWhenOneOfItsFieldsIsReplaced() {
        var file = "{ \"version\": 1, \"kind\": \"stand\", \"machine\": \"thickness-planer\" }";
        var base = at(Form.of(file, presets), "/machine/base/width")
                .set("\"400 mm\"")
                .json();

        assertThat(base).contains("\"width\": \"400 mm\"").contains("\"depth\": ");
    }

    @Test
    void putsAPresetsNameInThePlaceOfAnObject() {
        var file = "{ \"version\": 1, \"kind\": \"stand\", \"carcass\": { \"sheet\": { \"thickness\": \"18 mm\" } } }";

        assertThat(at(Form.of(file, presets), "/carcass/sheet/preset").set("\"birch-18\""))
                .isEqualTo(new Change("/carcass/sheet", "\"birch-18\""));
    }

    @Test
    void showsNumbersWithAllTheirDigitsAndUnknownFieldsAsTheyStand() {
        var file = "{ \"version\": 1, \"kind\": \"stand\", \"loads\": { \"drawers\": 12.50 }, \"colour\": [1, {}] }";
        var stand = Form.of(file, presets);

        assertThat(at(stand, "/loads/drawers").written()).contains("12.50");
        assertThat(at(stand, "/colour").input()).isEqualTo(Input.RAW);
        assertThat(at(stand, "/colour").written()).contains("[1, {}]");
        assertThat(at(stand, "/colour").isKnown()).isFalse();
    }

    @Test
    void startsEntriesThatTheReaderTakes() {
        var stand = Form.of(STAND, presets);
        var cutouts = stand.row("cutouts").orElseThrow();
        var bays = stand.row("bays").orElseThrow();

        assertThat(cutouts.members()).extracting(Choice::label).containsExactly("Round", "Rectangular");
        assertThat(cutouts.newEntry(cutouts.members().get(0)))
                .startsWith("{ \"kind\": \"round\", \"use\": \"use\", \"in\": \"worktop\", ");
        assertThat(bays.newEntry()).startsWith("{ \"contents\": [{ \"kind\": \"");
    }

    @Test
    void saysWhatIsFoldedInAFewWords() {
        var file = """
                { "version": 1, "kind": "cleat-wall", "holders": [{ "kind": "shelf", "name": "glue" }],
                  "rows": { "kind": "even", "lowest": "700 mm" } }
                """;
        var wall = Form.of(file, presets);

        assertThat(at(wall, "/holders/0").summary()).isEqualTo("Shelf \u201cglue\u201d");
        assertThat(wall.row("rows")).map(Row::summary).contains("Even");
    }

    @Test
    void refusesWhatIsNoJson() {
        assertThat(catchThrowable(() -> Form.of("{", presets))).isInstanceOf(DesignFileException.class);
    }

    static Row at(Row root, String pointer) {
        return everyRow(root)
                .filter(row -> row.pointer().equals(pointer) && !row.input().holdsRows())
                .findFirst()
                .or(() -> everyRow(root)
                        .filter(row -> row.pointer().equals(pointer))
                        .findFirst())
                .orElseThrow(() -> new AssertionError(pointer));
    }

    static Stream<Row> everyRow(Row row) {
        return Stream.concat(Stream.of(row), row.rows().stream().flatMap(FormTest::everyRow));
    }

    private static List<Row> givenValues(Row root) {
        return everyRow(root)
                .filter(row -> row.isGiven() && !row.input().holdsRows())
                .toList();
    }

    private static void collect(JsonNode value, String at, TreeMap<String, String> values) {
        if (!value.isContainerNode()) {
            values.put(at, JsonValue.words(value));
        }
        value.properties().forEach(field -> collect(field.getValue(), Pointer.child(at, field.getKey()), values));
        for (int i = 0; value.isArray() && i < value.size(); i++) {
            collect(value.get(i), Pointer.child(at, i), values);
        }
    }

    static Row along(Row root, String path) {
        var row = root;
        for (var name : path.substring(1).split("/")) {
            row = row.row(name).orElseThrow(() -> new AssertionError(path));
        }
        return row;
    }

    private static Design design(String text) {
        return DesignFiles.parse("design.json", text, LIBRARY).design();
    }

    static String applied(String text, Change change) {
        var root = JsonValue.of(text);
        var pointer = JsonPointer.compile(change.pointer());
        var value = JsonValue.of("[" + change.json() + "]").get(0);
        var around = root.at(pointer.head());
        if (around instanceof ArrayNode list) {
            list.set(pointer.last().getMatchingIndex(), value);
        } else {
            ((ObjectNode) around).set(pointer.last().getMatchingProperty(), value);
        }
        return root.toString();
    }
}
