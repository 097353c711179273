package org.standwright.viewer.hand.change;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.List;
import org.standwright.file.edit.JsonEdit;
import org.standwright.file.text.Pointer;

/** Writes into a text what a value of it has become, and nothing else: what stays the same keeps its writing. */
public final class Differences {
    private String text;

    private Differences(String text) {
        this.text = text;
    }

    /**
     * The text with {@code after} where {@code before} stands.
     *
     * @param pointer of the value that changes
     */
    public static String written(String text, String pointer, JsonNode before, JsonNode after) {
        var differences = new Differences(text);
        differences.value(pointer, before, after);
        return differences.text;
    }

    private void value(String pointer, JsonNode before, JsonNode after) {
        if (before.equals(after)) {
            return;
        }
        if (before.isArray() && after.isArray() && !before.isEmpty()) {
            list(pointer, (ArrayNode) before, (ArrayNode) after);
        } else if (before.isObject() && after.isObject() && before.path("kind").equals(after.path("kind"))) {
            object(pointer, before, after);
        } else {
            text = JsonEdit.set(text, pointer, Inline.of(after));
        }
    }

    private void object(String pointer, JsonNode before, JsonNode after) {
        before.fieldNames().forEachRemaining(name -> {
            if (!after.has(name)) {
                text = JsonEdit.remove(text, Pointer.child(pointer, name));
            }
        });
        after.properties().forEach(field -> {
            var inside = Pointer.child(pointer, field.getKey());
            if (before.has(field.getKey())) {
                value(inside, before.get(field.getKey()), field.getValue());
            } else {
                text = JsonEdit.set(text, inside, Inline.of(field.getValue()));
            }
        });
    }

    private void list(String pointer, ArrayNode before, ArrayNode after) {
        var old = entries(before);
        var now = entries(after);
        int head = 0;
        while (head < Math.min(old.size(), now.size()) && old.get(head).equals(now.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < Math.min(old.size(), now.size()) - head
                && old.get(old.size() - 1 - tail).equals(now.get(now.size() - 1 - tail))) {
            tail++;
        }
        middle(pointer, head, old.subList(head, old.size() - tail), now.subList(head, now.size() - tail));
    }

    private void middle(String pointer, int from, List<JsonNode> old, List<JsonNode> now) {
        if (old.size() == 2
                && now.size() == 2
                && old.get(0).equals(now.get(1))
                && old.get(1).equals(now.get(0))) {
            text = JsonEdit.move(text, pointer, from, from + 1);
            return;
        }
        int both = Math.min(old.size(), now.size());
        for (int i = 0; i < both; i++) {
            value(Pointer.child(pointer, from + i), old.get(i), now.get(i));
        }
        for (int i = both; i < now.size(); i++) {
            text = JsonEdit.insert(text, pointer, from + i, Inline.of(now.get(i)));
        }
        for (int i = old.size() - 1; i >= both; i--) {
            text = JsonEdit.remove(text, Pointer.child(pointer, from + i));
        }
    }

    private static List<JsonNode> entries(ArrayNode list) {
        var entries = new ArrayList<JsonNode>();
        list.forEach(entries::add);
        return entries;
    }
}
