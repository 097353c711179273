package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.design.Content.EqualDrawers;
import org.standwright.design.Content.FillDrawers;
import org.standwright.design.Content.GivenDrawers;
import org.standwright.design.Hang;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.Plan;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.WorkingHeight;
import org.standwright.design.Worktop.Overhang;
import org.standwright.design.kit.Reference;
import org.standwright.design.kit.Saw;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.Position;
import org.standwright.part.Colour;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.unit.Money;
import org.standwright.unit.Units;

class DesignFilesTest {
    private static final Colour BIRCH = new Colour(0xe3, 0xcd, 0xa4);

    @Test
    void readsADesignWithItsPresets() {
        var stand = design(SampleDesign.TEXT);

        assertThat(stand.name()).isEqualTo("Test stand");
        assertThat(stand.unit()).isEqualTo(Units.MM);
        assertThat(stand.workingHeight()).isEqualTo(new WorkingHeight.Given(900));
        assertThat(stand.machine().mass()).isEqualTo(38);
        assertThat(stand.machine().reference()).isEqualTo(Reference.fixed(Reference.Kind.TABLE, 100));
        assertThat(stand.carcass().sheet().material())
                .isEqualTo(new Material("Birch plywood 18 mm", 17.7, 685, Grain.ALONG_LENGTH).coloured(BIRCH));
        assertThat(((Support.Casters) stand.support()).caster().height()).isEqualTo(128);
        assertThat(stand.drawers().mount()).isEqualTo(Mount.OVERLAY);
        assertThat(stand.screws().slide().lengths()).containsExactly(8.0, 10.0, 13.0, 16.0);
    }

    @Test
    void readsEveryKindOfContent() {
        var bays = design(SampleDesign.TEXT).bays();

        assertThat(bays.get(0).width()).hasValue(400);
        assertThat(bays.get(0).contents()).containsExactly(new GivenDrawers(List.of(90.0, 100.0)));
        assertThat(bays.get(1).width()).isEmpty();
        assertThat(bays.get(1).contents())
                .containsExactly(
                        new EqualDrawers(3, OptionalDouble.empty(), OptionalDouble.empty()), new FillDrawers(80));
    }

    @Test
    void fillsInWhatTheSchemaGivesADefault() {
        var text = SampleDesign.TEXT
                .replace("  \"unit\": \"mm\",\n", "")
                .replace(", \"housing\": 6, \"fit\": \"0.15 mm\"", "")
                .replace(
                        ",\n    \"layers\": 2,\n    \"overhang\": { \"front\": 20, \"back\": 0, \"left\": 0, \"right\": 0 }",
                        "")
                .replace(",\n    \"gap\": 3,\n    \"bumper\": 1.5", "")
                .replace(",\n  \"saw\": { \"kerf\": 3.2, \"trim\": 5 }", "");

        var stand = design(text);

        assertThat(text).doesNotContain("unit", "housing", "layers", "gap", "saw");
        assertThat(stand.unit()).isEqualTo(Units.MM);
        assertThat(stand.carcass().housing()).isEqualTo(6);
        assertThat(stand.carcass().fit()).isEqualTo(0.15);
        assertThat(stand.worktop().layers()).isEqualTo(1);
        assertThat(stand.worktop().overhang()).isEqualTo(new Overhang(0, 0, 0, 0));
        assertThat(stand.drawers().gap()).isEqualTo(3);
        assertThat(stand.drawers().bumper()).isEqualTo(1.5);
        assertThat(stand.saw()).isEqualTo(new Saw(3.2, 5));
        assertThat(stand.machine().feet()).isZero();
    }

    @Test
    void readsPlainNumbersInTheFilesUnitButPresetsInTheirOwn() {
        var text = SampleDesign.with("\"unit\": \"mm\"", "\"unit\": \"in/64\"")
                .replace("\"width\": 720, \"depth\": 560", "\"width\": 28.5, \"depth\": \"22\"")
                .replace("\"housing\": 6", "\"housing\": 0.25")
                .replace("\"front\": 20", "\"front\": 0.75")
                .replace("[90, \"100 mm\"]", "[3.5, \"4 1/4\"]")
                .replace("\"front\": 80", "\"front\": 3")
                .replace("\"gap\": 3,", "\"gap\": 0.125,")
                .replace("\"bumper\": 1.5", "\"bumper\": 0")
                .replace("\"kerf\": 3.2, \"trim\": 5", "\"kerf\": 0.125, \"trim\": 0.25");

        var stand = design(text);

        assertThat(stand.unit()).isEqualTo(Units.INCH_64);
        assertThat(stand.plan()).isEqualTo(new Plan(OptionalDouble.of(723.9), OptionalDouble.of(558.8)));
        assertThat(stand.bays().get(0).contents()).containsExactly(new GivenDrawers(List.of(88.9, 107.95)));
        assertThat(stand.saw()).isEqualTo(new Saw(3.175, 6.35));
        assertThat(((Hang.Slides) stand.drawers().hang())
                        .slide()
                        .lengths()
                        .get(0)
                        .length())
                .isEqualTo(250);
    }

    @Test
    void replacesFieldsOfAPresetByThoseBesideItsName() {
        var text = SampleDesign.with(
                "\"sheet\": \"birch-18\"",
                "\"sheet\": { \"preset\": \"birch-18\", \"unit\": \"in\", \"thickness\": 0.7, \"grain\": \"none\","
                        + " \"price\": \"84.00 EUR\", \"note\": \"measured in May\" }");

        var sheet = design(text).carcass().sheet();

        assertThat(sheet.material())
                .isEqualTo(new Material("Birch plywood 18 mm", 17.78, 685, Grain.NONE).coloured(BIRCH));
        assertThat(sheet.length()).isEqualTo(2500);
        assertThat(sheet.price()).contains(Money.parse("84.00 EUR"));
    }

    @Test
    void takesAThingWrittenOutInTheDesign() {
        var text = SampleDesign.with("\"machine\": \"thickness-planer\"", """
                "machine": {
                    "name": "Router table", "base": { "width": "600 mm", "depth": "500 mm" },
                    "envelope": { "width": 650, "depth": 550, "height": 500 }, "mass": "44 lb",
                    "reference": { "kind": "worktop", "height": 0 }, "feet": 4
                  }""");

        var machine = design(text).machine();

        assertThat(machine.mass()).isEqualTo(19.95806428);
        assertThat(machine.feet()).isEqualTo(4);
        assertThat(machine.reference().kind()).isEqualTo(Reference.Kind.WORKTOP);
    }

    @Test
    void readsEveryKindOfSupport() {
        var supports = Map.of(
                "\"kind\": \"levelers\", \"leveler\": \"leveler-m10\"", "Levelers",
                "\"kind\": \"plinth\", \"height\": 80, \"toeSpace\": 60",
                        "Plinth[height=80.0, toeSpace=60.0, pads=5.0]",
                "\"kind\": \"plinth\", \"preset\": \"plinth-90\", \"pads\": 8",
                        "Plinth[height=90.0, toeSpace=75.0, pads=8.0]",
                "\"kind\": \"none\"", "None[pads=5.0]");

        supports.forEach((json, words) -> assertThat(
                        design(SampleDesign.with("\"kind\": \"casters\", \"caster\": \"caster-100\"", json))
                                .support()
                                .toString())
                .startsWith(words));
    }

    @Test
    void allowsANoteInEveryObject() {
        var text = SampleDesign.TEXT.replace("{", "{ \"note\": \"seen\",").replace("\"seen\",\n", "\"seen\",\n ");

        assertThat(design(text)).isEqualTo(design(SampleDesign.TEXT));
    }

    @Test
    void allowsTheSchemasAddressAtTheTop() {
        var text = SampleDesign.with("\"version\": 1", "\"$schema\": \"standwright.schema.json\", \"version\": 1");

        assertThat(design(text)).isEqualTo(design(SampleDesign.TEXT));
    }

    @Test
    void readsATextThatStartsWithAByteOrderMark() {
        assertThat(design("\ufeff" + SampleDesign.TEXT)).isEqualTo(design(SampleDesign.TEXT));
    }

    @ParameterizedTest
    @CsvSource({
        "/workingHeight, 7, 20, workingHeight",
        "/bays/1/contents/0/count, 18, 56, bays[1].contents[0].count",
        "/bays/1/width, 18, 5, bays[1].width",
        "/drawers/hang/slide/lengths/0/travel, 24, 42, drawers.hang.slide.lengths[0].travel",
        "'', 1, 1, ''"
    })
    void pointsToTheFieldThatARefusalNamesOrToWhatHoldsIt(String pointer, int line, int column, String field) {
        var refusal = new ImpossibleDesignException(pointer, "too little is left.", List.of("Use 2."));

        var problem = SampleDesign.read(SampleDesign.TEXT).problem(refusal);

        assertThat(problem.position()).contains(new Position(line, column));
        assertThat(problem.field()).isEqualTo(field);
        assertThat(problem.message())
                .isEqualTo("stand.json line " + line + ", column " + column + ": "
                        + (field.isEmpty() ? "" : "field \"" + field + "\": ") + "too little is left. Use 2.");
    }

    @Test
    void refusesWhatARecordRefuses() {
        var text = SampleDesign.with(
                "\"kind\": \"casters\", \"caster\": \"caster-100\"",
                "\"kind\": \"levelers\", \"leveler\": { \"preset\": \"leveler-m10\","
                        + " \"height\": { \"least\": 40, \"usual\": 30, \"most\": 60 } }");

        assertThatThrownBy(() -> SampleDesign.read(text))
                .isInstanceOf(DesignFileException.class)
                .hasMessage("stand.json line 9, column 84: field \"support.leveler.height\": least 40.0, usual 30.0 and"
                        + " most 60.0 mm must rise. Give the height at its lowest, as planned and at its highest.");
    }

    private static StandDesign design(String text) {
        return SampleDesign.stand(text);
    }
}
