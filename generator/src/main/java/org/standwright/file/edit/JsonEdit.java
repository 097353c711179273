package org.standwright.file.edit;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.List;
import java.util.Optional;
import org.standwright.file.text.Pointer;

/**
 * Edits of a JSON text that leave everything else in it as it was, character for character.
 *
 * <p>Every method throws a {@link JsonEditException} when the text, or a value to put into it, is no JSON, or where the
 * text has no such place. A value is put in as it is given; only where a new entry makes a line longer than
 * {@value Lines#LONGEST} characters do objects and lists that stood on that line get a line for each entry.
 */
public final class JsonEdit {
    private JsonEdit() {}

    /**
     * The text with {@code json} as the value at {@code pointer}: in the place of the one there, or in a new field at the
     * end of its object. Objects around it that are missing are made.
     */
    public static String set(String text, String pointer, String json) {
        WrittenReader.read(json);
        var steps = Steps.of(pointer);
        var root = WrittenReader.read(text);
        var way = root.way(steps);
        int found = way.size() - 1;
        var nearest = way.get(found);
        if (found == steps.size()) {
            return text.substring(0, nearest.start()) + json + text.substring(nearest.end());
        }
        if (nearest.shape() != Written.Shape.OBJECT) {
            throw noPlace(pointer, steps, found);
        }
        var longer = new Adding(text, root).field(nearest, steps.subList(found, steps.size()), json);
        return broken(text, nearest, longer, steps);
    }

    /** The text without the field or list entry at {@code pointer}, its comma and its line. */
    public static String remove(String text, String pointer) {
        var steps = Steps.of(pointer);
        if (steps.isEmpty()) {
            throw new JsonEditException("The whole text cannot be removed. Name a field or a list entry.");
        }
        var root = WrittenReader.read(text);
        var way = root.way(steps);
        if (way.size() <= steps.size()) {
            throw noPlace(pointer, steps, way.size() - 1);
        }
        var around = way.get(steps.size() - 1);
        var removed = removed(
                around,
                around.members()
                        .indexOf(around.member(steps.get(steps.size() - 1)).orElseThrow()));
        return text.substring(0, removed.offset()) + text.substring(removed.end());
    }

    /**
     * The text with a further entry in a list.
     *
     * @param index that the entry then has, from 0 to the list's size
     */
    public static String insert(String text, String listPointer, int index, String json) {
        WrittenReader.read(json);
        var root = WrittenReader.read(text);
        var list = list(root, listPointer);
        requireWithin(index, list.members().size(), listPointer);
        var steps = Steps.of(Pointer.child(listPointer, index));
        return broken(text, list, new Adding(text, root).entry(list, index, json), steps);
    }

    /** The text with a list's entry {@code from} at the place {@code to}, those between one further up or down. */
    public static String move(String text, String listPointer, int from, int to) {
        var list = list(WrittenReader.read(text), listPointer);
        int last = list.members().size() - 1;
        requireWithin(from, last, listPointer);
        requireWithin(to, last, listPointer);
        return Moving.moved(text, list, from, to);
    }

    /** The value at {@code pointer} as it is written. */
    public static Optional<String> get(String text, String pointer) {
        return place(text, pointer).map(span -> span.in(text));
    }

    /** Where the value at {@code pointer} stands. */
    public static Optional<Span> place(String text, String pointer) {
        return WrittenReader.read(text).at(Steps.of(pointer)).map(Written::span);
    }

    /** Where the key that {@code pointer} ends with stands, with its quotes; empty for a list entry too. */
    public static Optional<Span> key(String text, String pointer) {
        var steps = Steps.of(pointer);
        if (steps.isEmpty()) {
            return Optional.empty();
        }
        int last = steps.size() - 1;
        return WrittenReader.read(text)
                .at(steps.subList(0, last))
                .flatMap(around -> around.member(steps.get(last)))
                .flatMap(Written.Member::key);
    }

    /** A text as JSON writes it. */
    public static String quoted(String text) {
        return '"' + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
    }

    /** Breaks the lines of what has become too long, unless it was too long before. */
    private static String broken(String before, Written around, String after, List<String> steps) {
        return Lines.length(before, around.start()) > Lines.LONGEST ? after : Lines.broken(after, steps);
    }

    private static Span removed(Written around, int place) {
        var members = around.members();
        if (members.size() == 1) {
            return Span.between(around.start() + 1, around.end() - 1);
        }
        boolean last = place == members.size() - 1;
        return last
                ? Span.between(members.get(place - 1).end(), members.get(place).end())
                : Span.between(
                        members.get(place).start(), members.get(place + 1).start());
    }

    private static Written list(Written root, String pointer) {
        var steps = Steps.of(pointer);
        var value = root.at(steps)
                .orElseThrow(() -> noPlace(pointer, steps, root.way(steps).size() - 1));
        if (value.shape() != Written.Shape.LIST) {
            throw new JsonEditException("\"" + pointer + "\" must be a list.");
        }
        return value;
    }

    private static void requireWithin(int index, int most, String pointer) {
        if (index < 0 || index > most) {
            throw new JsonEditException(
                    "place " + index + " in the list \"" + pointer + "\" must be 0 to " + most + ".");
        }
    }

    private static JsonEditException noPlace(String pointer, List<String> steps, int found) {
        return new JsonEditException("The text has no place \"" + pointer + "\": there is no \"" + steps.get(found)
                + "\" in \"/" + String.join("/", steps.subList(0, found)) + "\".");
    }
}
