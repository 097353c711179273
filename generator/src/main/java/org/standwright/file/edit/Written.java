package org.standwright.file.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A value as it stands in a text.
 *
 * @param members of an object or list, in the text's order
 */
record Written(Span span, Shape shape, List<Member> members) {
    enum Shape {
        OBJECT,
        LIST,
        SINGLE
    }

    /**
     * An entry of an object or list.
     *
     * @param name key of an object's entry, place in a list
     * @param key with its quotes; empty in a list
     */
    record Member(String name, Optional<Span> key, Written value) {
        /** Where it begins: with its key where it has one. */
        int start() {
            return key.map(Span::offset).orElse(value.start());
        }

        int end() {
            return value.end();
        }

        String in(String text) {
            return text.substring(start(), end());
        }
    }

    int start() {
        return span.offset();
    }

    int end() {
        return span.end();
    }

    boolean isOnOneLine(String text) {
        return Lines.isOne(span.in(text));
    }

    /** @throws JsonEditException when the key stands there twice */
    Optional<Member> member(String name) {
        var found =
                members.stream().filter(member -> member.name().equals(name)).toList();
        if (found.size() > 1) {
            throw new JsonEditException("key \"" + name + "\" is given twice. Keep one.");
        }
        return found.stream().findFirst();
    }

    /** The values that lead to a place, this one first, as far as they are in the text. */
    List<Written> way(List<String> steps) {
        var way = new ArrayList<>(List.of(this));
        for (var step : steps) {
            var next = way.get(way.size() - 1).member(step);
            if (next.isEmpty()) {
                break;
            }
            way.add(next.get().value());
        }
        return way;
    }

    Optional<Written> at(List<String> steps) {
        var way = way(steps);
        return way.size() == steps.size() + 1 ? Optional.of(way.get(steps.size())) : Optional.empty();
    }
}
