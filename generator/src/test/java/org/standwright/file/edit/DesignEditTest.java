package org.standwright.file.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.Presets;
import org.standwright.design.Design;
import org.standwright.design.Draft;
import org.standwright.design.Plan;
import org.standwright.design.StandDesign;
import org.standwright.file.DesignFiles;
import org.standwright.file.SampleDesign;
import org.standwright.unit.Units;

/** Changes are given as another text that means them, or as a record. */
class DesignEditTest {
    private static final String STAND = SampleDesign.TEXT;

    @Test
    void nothingIsWrittenWhereNothingChanged() {
        assertThat(edited(STAND, STAND)).isEqualTo(STAND);
    }

    @Test
    void aSecondLayerChangesOneNumber() {
        assertThat(edited(STAND, JsonEdit.set(STAND, "/worktop/layers", "1")))
                .isEqualTo(STAND.replace("\"layers\": 2", "\"layers\": 1"));
    }

    @Test
    void whatIsNotInTheTextIsAdded() {
        assertThat(edited(STAND, JsonEdit.set(STAND, "/steady", "{ \"interlock\": true, \"anchor\": \"none\" }")))
                .endsWith("\"trim\": 5 },\n  \"steady\": { \"interlock\": true }\n}\n");
    }

    @Test
    void anotherPresetIsWrittenByItsName() {
        assertThat(edited(STAND, JsonEdit.set(STAND, "/carcass/sheet", "{ \"preset\": \"birch-15\" }")))
                .isEqualTo(STAND.replace(
                        "\"carcass\": { \"sheet\": \"birch-18\"", "\"carcass\": { \"sheet\": \"birch-15\""));
    }

    @Test
    void aPresetWithAnotherThicknessIsWrittenWithThatAlone() {
        assertThat(edited(
                        STAND,
                        JsonEdit.set(STAND, "/worktop/sheet", "{ \"preset\": \"birch-18\", \"thickness\": 19 }")))
                .contains("\"worktop\": {\n    \"sheet\": { \"preset\": \"birch-18\", \"thickness\": \"19 mm\" },\n");
    }

    @Test
    void fieldsBesideAPresetsNameComeAndGo() {
        var text = JsonEdit.set(
                STAND, "/worktop/sheet", "{ \"note\": \"Old.\", \"preset\": \"birch-18\", \"length\": 2000 }");

        assertThat(edited(text, text.replace("\"length\": 2000", "\"length\": 1900")))
                .isEqualTo(text.replace("\"length\": 2000", "\"length\": 1900"));
        assertThat(edited(text, text.replace("\"length\": 2000", "\"length\": 2000, \"width\": 700")))
                .isEqualTo(text.replace("\"length\": 2000", "\"length\": 2000, \"width\": \"700 mm\""));
        assertThat(edited(text, JsonEdit.set(text, "/worktop/sheet", "\"birch-18\"")))
                .isEqualTo(text.replace(", \"length\": 2000", ""));
    }

    @Test
    void aPlainNumberStaysOne() {
        assertThat(edited(STAND, JsonEdit.set(STAND, "/plan/depth", "\"60.5 cm\"")))
                .isEqualTo(STAND.replace("\"depth\": 560", "\"depth\": 605"));
    }

    @Test
    void aBareHeightStaysBareWhereItCan() {
        assertThat(edited(STAND, JsonEdit.set(STAND, "/workingHeight", "{ \"kind\": \"given\", \"height\": 950 }")))
                .isEqualTo(STAND.replace("\"900 mm\"", "\"950 mm\""));
        assertThat(edited(STAND, JsonEdit.set(STAND, "/workingHeight", """
                {
                  "kind": "elbow", "elbow": 1060, "work": "heavy"
                }""")))
                .isEqualTo(STAND.replace(
                        "\"900 mm\"", "{ \"kind\": \"elbow\", \"elbow\": \"1060 mm\", \"work\": \"heavy\" }"));
    }

    @Test
    void aNoteStaysWithWhatIsWrittenAnew() {
        var noted = JsonEdit.set(STAND, "/support/note", "\"It is rolled away.\"");

        assertThat(edited(noted, JsonEdit.set(STAND, "/support", "{ \"kind\": \"none\" }")))
                .contains("  \"support\": { \"note\": \"It is rolled away.\", \"kind\": \"none\" },\n");
    }

    @Test
    void entriesOfListsThatAreTheSameStay() {
        var fewer = JsonEdit.remove(STAND, "/bays/0");
        var more = JsonEdit.insert(STAND, "/bays/1/contents", 1, "{ \"kind\": \"drawers\", \"fronts\": [70] }");

        assertThat(edited(STAND, fewer)).isEqualTo(fewer);
        assertThat(edited(STAND, more))
                .isEqualTo(JsonEdit.insert(
                        STAND, "/bays/1/contents", 1, "{ \"kind\": \"drawers\", \"fronts\": [\"70 mm\"] }"));
    }

    @Test
    void inchesAreFractionsWhereTheyAre() {
        var text = Presets.shipped().show("stand/drill-press-stand");

        assertThat(edited(text, JsonEdit.set(text, "/plan/depth", "\"622.3 mm\"")))
                .contains("\"depth\": \"24 1/2 in\"");
        assertThat(edited(text, JsonEdit.set(text, "/plan/depth", "24.51"))).contains("\"depth\": \"24.51 in\"");
        assertThat(edited(text, JsonEdit.set(text, "/plan/depth", "\"601.037 mm\"")))
                .contains("\"depth\": \"601.037 mm\"");
    }

    @Test
    void theNoiseOfSumsIsLeftOut() {
        var text = Presets.shipped().show("stand/drill-press-stand");
        var stand = Presets.stand("stand.json", text);
        double deep = stand.plan().depth().getAsDouble() + 2 * 25.4;
        var deeper = Draft.of(stand, draft -> draft.plan = new Plan(stand.plan().width(), OptionalDouble.of(deep)));

        assertThat(deep).isNotEqualTo(609.6);
        assertThat(DesignEdit.of(text, stand, deeper, Presets.shipped())).contains("\"depth\": \"24 in\"");
    }

    /** The format wants a hinge's style beside its preset's name. */
    @Test
    void aHingeThatDiffersFromItsPresetHasItsStyleBesideIt() {
        var text = JsonEdit.set(STAND, "/bays/1/contents", "[{ \"kind\": \"door\", \"hinge\": \"hinge-35-overlay\" }]");
        var deeper = "{ \"preset\": \"hinge-35-overlay\", \"style\": \"concealed\", \"cupDepth\": \"12.5 mm\" }";

        assertThat(edited(text, JsonEdit.set(text, "/bays/1/contents/0/hinge", deeper)))
                .contains(deeper);
    }

    @Test
    void whatTheTextDoesNotMeanIsRefused() {
        var stand = Presets.stand("stand.json", STAND);
        var other = Draft.of(stand, draft -> draft.plan(700, 500));

        assertThatThrownBy(() -> DesignEdit.of(STAND, other, stand, Presets.shipped()))
                .isInstanceOf(JsonEditException.class)
                .hasMessageContaining("has changed since");
    }

    @Test
    void anotherUnitIsRefused() {
        var stand = Presets.stand("stand.json", STAND);
        StandDesign inches = stand.readIn(Units.INCH);

        assertThatThrownBy(() -> DesignEdit.of(STAND, stand, inches, Presets.shipped()))
                .isInstanceOf(JsonEditException.class)
                .hasMessageContaining("unit");
    }

    /** A file says of a stand before a wall no more than its name. */
    @Test
    void anotherStandBeforeAWallIsRefused() {
        var text = Presets.shipped().show("cleat-wall/door-wall");
        int at = text.indexOf("\"stand\": \"");
        assertThat(at).as("door-wall has a stand before it").isPositive();
        var other = text.replaceFirst("\"stand\": \"[a-z-]+\"", "\"stand\": \"mortiser-stand\"");

        assertThat(design(other)).isNotEqualTo(design(text));
        assertThatThrownBy(() -> edited(text, other))
                .isInstanceOf(JsonEditException.class)
                .hasMessageContaining("no more than the name of its design");
    }

    private static String edited(String text, String meaning) {
        return DesignEdit.of(text, design(text), design(meaning), Presets.shipped());
    }

    private static Design design(String text) {
        return DesignFiles.parse("stand.json", text, Presets.shipped()).design();
    }
}
