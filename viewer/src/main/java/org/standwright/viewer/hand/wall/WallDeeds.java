package org.standwright.viewer.hand.wall;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.standwright.file.edit.JsonEdit;
import org.standwright.file.text.Pointer;
import org.standwright.viewer.hand.change.Deed;
import org.standwright.viewer.hand.change.Inline;

/**
 * What comes of an action on an entry of a list: a holder or an obstacle.
 *
 * @param list pointer of the list
 * @param entries as the file has them
 * @param name of the entry, in words
 */
record WallDeeds(String text, String list, ArrayNode entries, int at, String name) {
    Deed of(WallAction action) {
        return switch (action) {
            case PLACE_AGAIN -> placeAgain();
            case DUPLICATE -> duplicate();
            case REMOVE ->
                new Deed("Remove " + name, Optional.of(JsonEdit.remove(text, pointer())), "", Optional.empty());
        };
    }

    private String pointer() {
        return Pointer.child(list, at);
    }

    private Deed placeAgain() {
        var what = "Let a place be found for " + name;
        if (!isHolder()) {
            return Deed.impossible(what, "Only for holders a place is found; " + name + " is where it is.");
        }
        return entries.get(at).has("place")
                ? Deed.of(what, JsonEdit.remove(text, pointer() + "/place"), pointer())
                : Deed.impossible(what, name + " has no place of its own: one is found already.");
    }

    private Deed duplicate() {
        var copy = (ObjectNode) entries.get(at).deepCopy();
        copy.remove("note");
        copy.remove("place");
        if (copy.has("name")) {
            copy.put("name", free(copy.get("name").asText()));
        }
        var changed = JsonEdit.insert(text, list, at + 1, Inline.of(copy));
        return Deed.of("Duplicate " + name, changed, Pointer.child(list, at + 1));
    }

    /** The name with the first number that no other entry has. */
    private String free(String name) {
        int number = 2;
        while (isTaken(name + " " + number)) {
            number++;
        }
        return name + " " + number;
    }

    private boolean isTaken(String name) {
        return StreamSupport.stream(entries.spliterator(), false)
                .map(entry -> entry.path("name"))
                .map(JsonNode::asText)
                .anyMatch(other -> other.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)));
    }

    private boolean isHolder() {
        return list.equals("/holders");
    }
}
