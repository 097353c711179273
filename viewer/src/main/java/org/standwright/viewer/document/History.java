package org.standwright.viewer.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All states that a document had, in order, and at which of them it is.
 *
 * @param at index of the present state
 */
public record History(List<Document> states, int at) {
    public History {
        states = List.copyOf(states);
    }

    public static History of(Document first) {
        return new History(List.of(first), 0);
    }

    public Document present() {
        return states.get(at);
    }

    /** With a state after the present one; those that had been undone are forgotten. */
    public History with(Document next) {
        var kept = new ArrayList<>(states.subList(0, at + 1));
        kept.add(next);
        return new History(kept, at + 1);
    }

    /** What an undo takes back; nothing at the first state. */
    public Optional<String> undoes() {
        return at > 0 ? Optional.of(present().what()) : Optional.empty();
    }

    /** What a redo does again; nothing at the last state. */
    public Optional<String> redoes() {
        return at + 1 < states.size() ? Optional.of(states.get(at + 1).what()) : Optional.empty();
    }

    /** One state back; the same at the first. */
    public History undone() {
        return at > 0 ? new History(states, at - 1) : this;
    }

    /** One state on; the same at the last. */
    public History redone() {
        return at + 1 < states.size() ? new History(states, at + 1) : this;
    }
}
