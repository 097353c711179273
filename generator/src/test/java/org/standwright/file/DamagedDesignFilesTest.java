package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.Pointer;

/** Whatever happens to a design file, it is read or refused with messages that name a place. */
class DamagedDesignFilesTest {
    private static final int CASES = "full".equals(System.getProperty("standwright.random")) ? 2_000 : 100;
    private static final String LETTERS = "{}[]\":,0-. eE/\\\n\tnulmtrfas'\u00e9";
    private static final List<String> VALUES = List.of(
            "null",
            "true",
            "0",
            "-1",
            "1e308",
            "0.5",
            "\"\"",
            "\"x\"",
            "\"3 mm\"",
            "\"-7 in\"",
            "\"birch-18\"",
            "[]",
            "{}",
            "[[]]",
            "[null]",
            "{ \"kind\": \"plinth\" }",
            "{ \"preset\": \"birch-18\" }",
            "{ \"preset\": 1 }",
            "[{ \"kind\": 3 }]",
            "{ \"kind\": \"elbow\", \"elbow\": 1100, \"work\": \"light\" }",
            "{ \"kind\": \"open\" }",
            "{ \"kind\": \"divided\", \"bays\": [1, {}] }",
            "{ \"preset\": \"hinge-butt-50\", \"style\": \"butt\" }",
            "{ \"preset\": \"thickness-planer\", \"style\": \"tape\" }",
            "[{ \"kind\": \"round\" }]",
            "45");
    /** The sample with one of everything that it leaves out. */
    private static final String RICH = SampleDesign.TEXT
            .replace("\"900 mm\"", "{ \"kind\": \"beside\", \"surface\": \"bench\", \"surfaceHeight\": 900 }")
            .replace(
                    "  \"plan\"",
                    "  \"place\": { \"turn\": 90, \"margins\": { \"left\": 20 }, \"shims\": { \"least\": 0,"
                            + " \"usual\": 2, \"most\": 9 } },\n  \"layout\": \"mirrored\",\n  \"plan\"")
            .replace("\"caster-100\"", "\"caster-100\", \"others\": \"caster-100-fixed\"")
            .replace("\"housing\": 6", "\"joint\": { \"kind\": \"dowels\", \"dowel\": \"dowel-8x30\" }")
            .replace(
                    "\"layers\": 2",
                    "\"layers\": 2, \"plate\": { \"name\": \"Plate\", \"x\": 360, \"y\": 280, \"width\": 298,"
                            + " \"depth\": 235, \"thickness\": 9.5 }")
            .replace(
                    "  \"bays\"",
                    "  \"cutouts\": [{ \"kind\": \"round\", \"use\": \"cord\", \"in\": \"back\", \"x\": 90,"
                            + " \"y\": 80, \"diameter\": 60 }],\n  \"edges\": { \"fronts\": \"tape-2\","
                            + " \"worktop\": { \"front\": \"lipping-8\" } },\n  \"bays\"")
            .replace(
                    "{ \"kind\": \"filled-drawers\", \"front\": 80 }",
                    "{ \"kind\": \"divided\", \"bays\": [{ \"contents\": [{ \"kind\": \"door\", \"hinge\":"
                            + " { \"preset\": \"hinge-35-inset\", \"style\": \"concealed\", \"opening\": 95 } }] },"
                            + " { \"contents\": [{ \"kind\": \"open\", \"shelves\": { \"kind\": \"fixed\","
                            + " \"count\": 1 } }, { \"kind\": \"clear\", \"use\": \"hose\" }] }] }")
            .replace("\"gap\": 3", "\"gap\": 3, \"grip\": { \"kind\": \"pull\", \"pull\": \"pull-96\" }");

    @Test
    void readsWhatItDamages() {
        assertThat(SampleDesign.stand(RICH).cutouts()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void survivesAnyLetterChanged(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            var text = new StringBuilder(RICH);
            for (int changes = random.nextInt(1, 4); changes > 0; changes--) {
                int at = random.nextInt(text.length());
                var letter = String.valueOf(LETTERS.charAt(random.nextInt(LETTERS.length())));
                text.replace(at, at + random.nextInt(2), random.nextBoolean() ? letter : "");
            }
            assertReadOrRefused(text.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void survivesAnyValueReplaced(long seed) throws IOException {
        var random = new SplittableRandom(seed);
        var mapper = new ObjectMapper();
        for (int i = 0; i < CASES; i++) {
            var tree = mapper.readTree(RICH);
            var pointers = new ArrayList<String>();
            collect("", tree, pointers);
            var pointer = JsonPointer.compile(pointers.get(random.nextInt(pointers.size())));
            var value = mapper.readTree(VALUES.get(random.nextInt(VALUES.size())));
            if (tree.at(pointer.head()) instanceof ObjectNode object) {
                object.set(pointer.last().getMatchingProperty(), value);
            } else {
                ((ArrayNode) tree.at(pointer.head())).set(pointer.last().getMatchingIndex(), value);
            }
            assertReadOrRefused(mapper.writerWithDefaultPrettyPrinter().writeValueAsString(tree));
        }
    }

    private static void assertReadOrRefused(String text) {
        try {
            assertThat(SampleDesign.stand(text).bays()).isNotEmpty();
        } catch (DesignFileException refused) {
            int lines = (int) text.lines().count();
            for (var problem : refused.problems()) {
                assertThat(problem.position().orElseThrow().line()).as(text).isBetween(1, lines + 1);
                assertThat(problem.message())
                        .as(text)
                        .startsWith("stand.json line ")
                        .doesNotContain("Jackson", "java.");
            }
        } catch (RuntimeException crash) {
            throw new AssertionError(text, crash);
        }
    }

    private static void collect(String pointer, JsonNode node, List<String> pointers) {
        node.properties().forEach(field -> {
            pointers.add(Pointer.child(pointer, field.getKey()));
            collect(Pointer.child(pointer, field.getKey()), field.getValue(), pointers);
        });
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            pointers.add(Pointer.child(pointer, i));
            collect(Pointer.child(pointer, i), node.get(i), pointers);
        }
    }
}
