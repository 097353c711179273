package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.StandBuilder;

/** A design file with some of its fields changed, as a maker would with an editor. */
record ChangedDesign(JsonNode file) {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** A stand that is shipped. */
    static ChangedDesign of(String preset) {
        return new ChangedDesign(read(Presets.shipped().show("stand/" + preset)));
    }

    /** With each field, a JSON pointer, of an object set to its value; {@code null} takes it out. */
    ChangedDesign with(String changes) {
        var changed = this;
        for (var change : read(changes).properties()) {
            changed = changed.with(change.getKey(), change.getValue());
        }
        return changed;
    }

    /** With one field, a JSON pointer, set to a value; objects on the way to it that are missing are added. */
    ChangedDesign with(String pointer, JsonNode value) {
        var copy = file.deepCopy();
        var parent = copy;
        var path = pointer.substring(1).split("/");
        for (int i = 0; i < path.length - 1; i++) {
            parent = parent instanceof ObjectNode object && !object.has(path[i])
                    ? object.putObject(path[i])
                    : parent.at("/" + path[i]);
        }
        var last = path[path.length - 1];
        if (parent instanceof ArrayNode array) {
            array.set(Integer.parseInt(last), value);
        } else if (value.isNull()) {
            ((ObjectNode) parent).remove(last);
        } else {
            ((ObjectNode) parent).set(last, value);
        }
        return new ChangedDesign(copy);
    }

    /** With what a message says in its place: an object as it stands there, anything else as text. */
    ChangedDesign copied(String pointer, String words) {
        return with(
                pointer,
                words.startsWith("{") ? read(words) : JSON.getNodeFactory().textNode(words));
    }

    Stand stand() {
        return StandBuilder.build(design());
    }

    StandDesign design() {
        return Presets.stand("stand", file.toString());
    }

    ImpossibleDesignException refusal() {
        var refused = catchThrowableOfType(ImpossibleDesignException.class, this::stand);
        assertThat(refused).as("refusal of %s", file).isNotNull();
        return refused;
    }

    private static JsonNode read(String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new AssertionError(text, e);
        }
    }
}
