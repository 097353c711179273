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
            "[{ \"kind\": 3 }]");

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void survivesAnyLetterChanged(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            var text = new StringBuilder(SampleDesign.TEXT);
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
            var tree = mapper.readTree(SampleDesign.TEXT);
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
            assertThat(SampleDesign.read(text).design().bays()).isNotEmpty();
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
