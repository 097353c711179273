package org.standwright.file.text;

import java.util.HashMap;
import java.util.Map;

/** Where the keys and values of one JSON text stand, by JSON pointer. */
public final class Positions {
    private final Map<String, Position> keys = new HashMap<>();
    private final Map<String, Position> values = new HashMap<>();

    void putKey(String pointer, Position position) {
        keys.put(pointer, position);
    }

    void putValue(String pointer, Position position) {
        values.put(pointer, position);
    }

    /** Of the key that {@code pointer} ends with; of the value when it has none. */
    public Position key(String pointer) {
        var position = keys.get(pointer);
        return position == null ? value(pointer) : position;
    }

    /** Of the value, or of the nearest value around it that is in the text. */
    Position value(String pointer) {
        var position = values.get(pointer);
        if (position != null) {
            return position;
        }
        return pointer.isEmpty() ? new Position(1, 1) : value(Pointer.parent(pointer));
    }
}
