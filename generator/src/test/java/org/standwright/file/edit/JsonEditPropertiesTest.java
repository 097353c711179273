package org.standwright.file.edit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.standwright.file.text.Pointer;

/** What holds for every edit of every text; trees are those of Jackson, which the edits do not use. */
class JsonEditPropertiesTest {
    private static final ObjectMapper TREES =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);
    private static final int TEXTS = 300;

    @Test
    void everyValueIsFoundAsItIsWritten() {
        texts().forEach(random -> {
            var text = random.text();
            for (var place : places(text)) {
                assertThat(tree(JsonEdit.get(text, place).orElseThrow()))
                        .as(text)
                        .isEqualTo(tree(text).at(place));
                var span = JsonEdit.place(text, place).orElseThrow();
                assertThat(span.in(text)).isEqualTo(span.in(text).strip());
            }
        });
    }

    @Test
    void keysAreFoundBeforeTheirValues() {
        var text = "{ \"a\": { \"b/c\" : [7] } }";

        assertThat(JsonEdit.key(text, "/a/b~1c"))
                .hasValueSatisfying(span -> assertThat(span.in(text)).isEqualTo("\"b/c\""));
        assertThat(JsonEdit.key(text, "/a/b~1c/0")).isEmpty();
        assertThat(JsonEdit.key(text, "/b")).isEmpty();
        assertThat(JsonEdit.key(text, "")).isEmpty();
    }

    @Test
    void settingAValueChangesItAloneAndSettingItBackChangesNothing() {
        texts().forEach(random -> {
            var text = random.text();
            for (var place : places(text)) {
                var json = random.value();
                var old = JsonEdit.place(text, place).orElseThrow();
                var set = JsonEdit.set(text, place, json);

                assertThat(set).isEqualTo(text.substring(0, old.offset()) + json + text.substring(old.end()));
                assertThat(tree(set)).as(text).isEqualTo(replaced(tree(text), place, tree(json)));
                assertThat(JsonEdit.set(set, place, old.in(text))).isEqualTo(text);
            }
        });
    }

    @Test
    void removingAFieldThatWasAddedGivesTheTextBack() {
        int[] same = {0};
        texts().forEach(random -> {
            var text = random.text();
            for (var place : places(text)) {
                if (tree(text).at(place) instanceof ObjectNode) {
                    var json = random.value();
                    var field = Pointer.child(place, "new / field");
                    var added = JsonEdit.set(text, field, json);
                    var wanted = tree(text);
                    ((ObjectNode) wanted.at(place)).set("new / field", tree(json));

                    assertThat(tree(added)).as(text).isEqualTo(wanted);
                    assertThat(withoutBlanks(JsonEdit.remove(added, field))).isEqualTo(withoutBlanks(text));
                    if (onlyInserted(text, added)
                            && !JsonEdit.get(text, place).orElseThrow().matches("\\{\\s+}")) {
                        same[0]++;
                        assertThat(JsonEdit.remove(added, field)).as(added).isEqualTo(text);
                    }
                }
            }
        });
        assertThat(same[0]).isGreaterThan(TEXTS);
    }

    @Test
    void objectsAroundANewFieldAreMade() {
        texts().forEach(random -> {
            var text = random.text();
            for (var place : places(text)) {
                if (tree(text).at(place) instanceof ObjectNode) {
                    var deep = JsonEdit.set(text, place + "/new/inner/last", "1.50");

                    assertThat(JsonEdit.get(deep, place + "/new/inner/last")).hasValue("1.50");
                    assertThat(tree(JsonEdit.remove(deep, place + "/new"))).isEqualTo(tree(text));
                }
            }
        });
    }

    @Test
    void removingAnEntryThatWasInsertedGivesTheTextBack() {
        int[] same = {0};
        texts().forEach(random -> {
            var text = random.text();
            for (var place : places(text)) {
                if (tree(text).at(place) instanceof ArrayNode list) {
                    int index = random.random().nextInt(list.size() + 1);
                    var json = random.value();
                    var inserted = JsonEdit.insert(text, place, index, json);
                    var wanted = tree(text);
                    ((ArrayNode) wanted.at(place)).insert(index, tree(json));
                    var without = JsonEdit.remove(inserted, place + "/" + index);

                    assertThat(tree(inserted)).as(text).isEqualTo(wanted);
                    if (onlyInserted(text, inserted)
                            && !JsonEdit.get(text, place).orElseThrow().matches("\\[\\s+]")) {
                        same[0]++;
                        assertThat(without).as(inserted).isEqualTo(text);
                    }
                }
            }
        });
        assertThat(same[0]).isGreaterThan(TEXTS);
    }

    @Test
    void removingLeavesEverythingElse() {
        texts().forEach(random -> {
            var text = random.text();
            for (var place : places(text)) {
                if (!place.isEmpty()) {
                    var removed = JsonEdit.remove(text, place);

                    assertThat(tree(removed)).as(text).isEqualTo(removed(tree(text), place));
                    assertThat(onlyInserted(removed, text)).isTrue();
                }
            }
        });
    }

    @Test
    void movingThereAndBackGivesTheTextBack() {
        texts().forEach(random -> {
            var text = random.text();
            for (var place : places(text)) {
                if (tree(text).at(place) instanceof ArrayNode list && !list.isEmpty()) {
                    int from = random.random().nextInt(list.size());
                    int to = random.random().nextInt(list.size());
                    var moved = JsonEdit.move(text, place, from, to);
                    var wanted = tree(text);
                    var entries = (ArrayNode) wanted.at(place);
                    entries.insert(to, entries.remove(from));

                    assertThat(tree(moved)).as(text).isEqualTo(wanted);
                    assertThat(moved).hasSameSizeAs(text);
                    assertThat(JsonEdit.move(moved, place, to, from)).isEqualTo(text);
                }
            }
        });
    }

    @Test
    void textsLongerThanAParsersBufferAreEditedInTheRightPlace() {
        var text = LongStream.range(0, 4000)
                .mapToObj(seed -> new RandomJson(seed).text())
                .collect(Collectors.joining(",\n", "[", "]"));

        assertThat(text.length()).isGreaterThan(200_000);
        var last = JsonEdit.get(text, "/3999").orElseThrow();
        assertThat(last).isEqualTo(new RandomJson(3999).text().strip());
        assertThat(JsonEdit.set(text, "/3999", "7"))
                .isEqualTo(text.substring(0, text.lastIndexOf(last)) + "7"
                        + text.substring(text.lastIndexOf(last) + last.length()));
    }

    private static List<RandomJson> texts() {
        return LongStream.range(0, TEXTS).mapToObj(RandomJson::new).toList();
    }

    /** Pointers of everything in a text. */
    private static List<String> places(String text) {
        var places = new ArrayList<String>();
        collect(tree(text), "", places);
        return places;
    }

    private static void collect(JsonNode node, String pointer, List<String> into) {
        into.add(pointer);
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            collect(field.getValue(), Pointer.child(pointer, field.getKey()), into);
        }
        for (int index = 0; node.isArray() && index < node.size(); index++) {
            collect(node.get(index), Pointer.child(pointer, index), into);
        }
    }

    private static JsonNode replaced(JsonNode tree, String place, JsonNode with) {
        if (place.isEmpty()) {
            return with;
        }
        var key = key(place);
        if (around(tree, place) instanceof ObjectNode object) {
            object.set(key, with);
        } else {
            ((ArrayNode) around(tree, place)).set(Integer.parseInt(key), with);
        }
        return tree;
    }

    private static JsonNode removed(JsonNode tree, String place) {
        if (around(tree, place) instanceof ObjectNode object) {
            object.remove(key(place));
        } else {
            ((ArrayNode) around(tree, place)).remove(Integer.parseInt(key(place)));
        }
        return tree;
    }

    private static JsonNode around(JsonNode tree, String place) {
        return tree.at(place.substring(0, place.lastIndexOf('/')));
    }

    private static String key(String place) {
        return place.substring(place.lastIndexOf('/') + 1).replace("~1", "/").replace("~0", "~");
    }

    /** Whether the longer text is the shorter with one stretch put in. */
    private static boolean onlyInserted(String shorter, String longer) {
        int start = 0;
        while (start < shorter.length() && shorter.charAt(start) == longer.charAt(start)) {
            start++;
        }
        return longer.endsWith(shorter.substring(start));
    }

    private static String withoutBlanks(String text) {
        return text.replaceAll("\\s", "");
    }

    private static JsonNode tree(String text) {
        try {
            return TREES.readTree(text);
        } catch (JsonProcessingException e) {
            throw new AssertionError(text, e);
        }
    }
}
