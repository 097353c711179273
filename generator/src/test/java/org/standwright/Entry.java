package org.standwright;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.StreamSupport;

/** One value of a report; asking it for a number or a word that it does not have fails. */
record Entry(JsonNode json) {
    double number(String pointer) {
        if (!json.at(pointer).isNumber()) {
            throw new AssertionError("no number at " + pointer + " of " + json);
        }
        return json.at(pointer).doubleValue();
    }

    /** Or another one where it says nothing there. */
    double number(String pointer, double otherwise) {
        return has(pointer) ? number(pointer) : otherwise;
    }

    String text(String pointer) {
        if (!json.at(pointer).isTextual()) {
            throw new AssertionError("no word at " + pointer + " of " + json);
        }
        return json.at(pointer).textValue();
    }

    boolean has(String pointer) {
        return !json.at(pointer).isMissingNode();
    }

    Entry at(String pointer) {
        return new Entry(json.at(pointer));
    }

    /** Nothing where there is no list. */
    List<Entry> list(String pointer) {
        return StreamSupport.stream(json.at(pointer).spliterator(), false)
                .map(Entry::new)
                .toList();
    }

    List<Double> numbers(String pointer) {
        return list(pointer).stream().map(entry -> entry.number("")).toList();
    }

    String kind() {
        return text("/kind");
    }
}
