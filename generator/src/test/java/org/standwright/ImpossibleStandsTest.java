package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.file.DesignFiles;
import org.standwright.make.Product;

/** The planer stand with one thing changed: what is refused, at which field, and with which way out. */
class ImpossibleStandsTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        /carcass/housing | '0' | /carcass/housing | A housing 0 mm deep in panels of 17.7 mm must be 2 mm to 11.7 mm deep
        /carcass/housing | '"17 mm"' | /carcass/housing | A housing 17 mm deep
        /carcass/housing | '"20 mm"' | /carcass/housing | A housing 20 mm deep
        /carcass/sheet | '{"preset":"birch-18","thickness":"6 mm"}' | /carcass/sheet | A carcass panel of 6 mm is too thin
        /carcass/sheet | '{"preset":"birch-18","thickness":"12 mm"}' | /carcass/sheet | A caster block of two layers of Birch plywood 18 mm is 24 mm thick
        /support/caster | '{"preset":"caster-100","plate":{"width":50,"depth":50}}' | /support/caster | The bolt holes of
        /support/caster | '{"preset":"caster-100","holes":{"width":200,"depth":200}}' | /support/caster | The bolt holes of
        /support/caster | '{"preset":"caster-100","bolt":"20 mm"}' | /support/caster | A bolt of 20 mm does not go through the holes of 9 mm
        /drawers/box | '"birch-6.5"' | /drawers/box | Drawer boxes of 6.4 mm are too thin
        /workingHeight | '"300 mm"' | /workingHeight | A working height of 300 mm leaves 1.2 mm to the carcass
        /plan/width | '"2600 mm"' | /plan/width | Part 'bottom' is cut
        /bays/0/contents | '[{"kind":"equal-drawers","count":20},{"kind":"equal-drawers","count":20}]' | /workingHeight | A working height of 900 mm leaves 601.2 mm to the carcass, but what is in its bays needs 3191 mm. Put fewer or lower things into its bays: working heights end at 2500 mm.
        /plan/depth | '"200 mm"' | /plan/depth | A plan 200 mm deep is too small for its support and its drawers
        /plan/width | '"160 mm"' | /plan/width | A plan 160 mm wide is too small
        /bays/0/width | '"700 mm"' | /plan/width | The given bays and the panels between them are 753.1 mm wide together, more than the plan of 720 mm
        /drawers/front | '{"preset":"birch-18","length":"1000 mm"}' | /carcass/sheet | Its board has the name of another one
        """)
    void refusesAtTheFieldToChange(String pointer, String value, String field, String message) {
        var refused = refusal(with(pointer, value));

        assertThat(refused.field()).isEqualTo(field);
        assertThat(refused.getMessage()).startsWith(message);
    }

    @Test
    void letsTheLowestOfGivenFrontsTakeLessThanATapeMark() {
        var one = "[{\"contents\":[{\"kind\":\"drawers\",\"fronts\":[\"300 mm\",\"100 mm\"]}]}]";
        var message = refusal(with("/bays", one)).getMessage();
        assertThat(message).contains("Make the lowest front 292 mm high", "Or make the working height 708 mm");

        for (var design : new JsonNode[] {
            with("/bays", one.replace("100 mm", "292 mm")), set(with("/bays", one), "/workingHeight", "\"708 mm\"")
        }) {
            var stand = stand(design);
            assertThat(stand.stack().sum()).isEqualTo(stand.stack().workingHeight());
            Clearances.check(stand.assembly());
        }
    }

    @ParameterizedTest
    @CsvSource({"table", "spindle"})
    void standsAMachineWhoseReferenceIsItsUnderside(String kind) {
        var flat = "{\"preset\":\"thickness-planer\",\"reference\":{\"kind\":\"" + kind + "\",\"height\":0}}";
        var product = Product.of(Presets.stand("stand", with("/machine", flat).toString()));

        assertThat(((Stand) product.furniture()).stack().sum()).isEqualTo(900);
    }

    /** Odd, but nothing stands against it: every file can be written. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        /drawers/bumper | 0
        /carcass/fit | 0
        /saw/trim | 0
        /worktop/overhang/front | 0
        /support | '{"kind":"none","pads":0}'
        /support | '{"kind":"plinth","height":"90 mm","toeSpace":0,"pads":0}'
        /machine | '{"preset":"thickness-planer","reference":{"kind":"worktop","height":0}}'
        /drawers/mount | '"inset"'
        """)
    void writesEveryFileOfAnOddDesign(String pointer, String value) {
        var design = DesignFiles.parse("stand", with(pointer, value).toString(), Presets.shipped())
                .design();

        assertThat(Bytes.of(design)).containsKeys("packet.pdf", "report.json", "assembly-mm.stl");
    }

    private static JsonNode with(String pointer, String value) {
        try {
            return set(JSON.readTree(Presets.shipped().show("stand/planer-stand")), pointer, value);
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private static JsonNode set(JsonNode design, String pointer, String value) {
        try {
            int slash = pointer.lastIndexOf('/');
            var parent = design.at(pointer.substring(0, slash));
            if (parent instanceof ArrayNode array) {
                array.set(Integer.parseInt(pointer.substring(slash + 1)), JSON.readTree(value));
            } else {
                ((ObjectNode) parent).set(pointer.substring(slash + 1), JSON.readTree(value));
            }
            return design;
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private static Stand stand(JsonNode design) {
        return StandBuilder.build(Presets.stand("stand", design.toString()));
    }

    private static ImpossibleDesignException refusal(JsonNode design) {
        var refused = catchThrowableOfType(ImpossibleDesignException.class, () -> stand(design));
        assertThat(refused).as("refusal").isNotNull();
        return refused;
    }
}
