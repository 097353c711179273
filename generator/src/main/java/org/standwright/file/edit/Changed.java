package org.standwright.file.edit;

import com.fasterxml.jackson.databind.JsonNode;
import org.standwright.file.SchemaPlace;
import org.standwright.file.text.Pointer;
import org.standwright.unit.Units;

/**
 * A value in a text, and what it is to mean.
 *
 * @param at where it stands
 * @param written as it is in the text; missing where it is not there
 * @param here what the schema says about its place
 * @param before what it means, in mm, kg and N
 * @param after what it is to mean; missing where it is to go
 * @param around unit of plain numbers around it
 */
record Changed(String at, JsonNode written, SchemaPlace here, JsonNode before, JsonNode after, Units around) {
    boolean isSame() {
        return SameTree.is(before, after);
    }

    boolean isOfOneKind() {
        return before.path("kind").equals(after.path("kind"))
                && before.path("style").equals(after.path("style"));
    }

    /** Unit of plain numbers in it. */
    Units unit() {
        return Units.named(written.path("unit").asText()).orElse(around);
    }

    Changed field(String name, SchemaPlace place) {
        return new Changed(
                Pointer.child(at, name), written.path(name), place, before.path(name), after.path(name), unit());
    }

    Changed entry(int place) {
        return new Changed(
                Pointer.child(at, place), written.get(place), items(), before.get(place), after.get(place), around);
    }

    SchemaPlace items() {
        return here.items(written).orElseThrow();
    }
}
