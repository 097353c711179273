package org.standwright.viewer.form;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Edits that are made in a tree, and what they were called. */
final class TreeEdits implements Edits {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    final List<String> steps = new ArrayList<>();
    Consumer<String> whenChanged = text -> {};
    private JsonNode root;

    TreeEdits(String text) {
        root = tree(text);
    }

    String text() {
        return root.toPrettyString();
    }

    JsonNode at(String pointer) {
        return root.at(pointer);
    }

    @Override
    public void set(String pointer, String json, String what) {
        var at = JsonPointer.compile(pointer);
        if (at.matches()) {
            root = tree(json);
        } else if (around(at) instanceof ArrayNode list) {
            list.set(at.last().getMatchingIndex(), tree(json));
        } else {
            ((ObjectNode) around(at)).set(at.last().getMatchingProperty(), tree(json));
        }
        done(what);
    }

    @Override
    public void remove(String pointer, String what) {
        var at = JsonPointer.compile(pointer);
        if (around(at) instanceof ArrayNode list) {
            list.remove(at.last().getMatchingIndex());
        } else {
            ((ObjectNode) around(at)).remove(at.last().getMatchingProperty());
        }
        done(what);
    }

    @Override
    public void insert(String list, int index, String json, String what) {
        ((ArrayNode) root.at(list)).insert(index, tree(json));
        done(what);
    }

    @Override
    public void move(String list, int from, int to, String what) {
        var entries = (ArrayNode) root.at(list);
        entries.insert(to, entries.remove(from));
        done(what);
    }

    private void done(String what) {
        steps.add(what);
        whenChanged.accept(text());
    }

    private JsonNode around(JsonPointer at) {
        return root.at(at.head());
    }

    private static JsonNode tree(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (JsonProcessingException e) {
            throw new AssertionError(json, e);
        }
    }
}
