package org.standwright.viewer.hand.stand;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.stream.StreamSupport;
import org.standwright.design.Layout;
import org.standwright.design.StandDesign;
import org.standwright.file.edit.JsonEdit;
import org.standwright.file.text.Pointer;
import org.standwright.viewer.hand.change.Deed;
import org.standwright.viewer.hand.change.Differences;
import org.standwright.viewer.hand.change.Tape;

/** What may be done to one bay among those beside it. */
final class BayDeeds {
    private static final String WIDTH = "width";

    private final String text;
    private final StandDesign design;
    private final Bays bays;
    private final int bay;
    private final Bays.One here;

    BayDeeds(String text, StandDesign design, Bays bays, int bay) {
        this.text = text;
        this.design = design;
        this.bays = bays;
        this.bay = bay;
        this.here = bays.across().get(bay);
    }

    Deed add() {
        ArrayNode list = bays.written().deepCopy();
        if (allGiven(list)) {
            ((ObjectNode) list.get(here.at())).remove(WIDTH);
        }
        var fresh = JsonNodeFactory.instance.objectNode();
        fresh.putArray("contents").addObject().put("kind", "open");
        list.insert(right(), fresh);
        return done("Add a bay to the right of " + here.name(), list, right());
    }

    Deed split() {
        ArrayNode list = bays.written().deepCopy();
        var tape = new Tape(design.unit());
        double panel = design.carcass().sheet().material().thickness();
        double left = tape.down((here.width() - panel) / 2);
        var first = (ObjectNode) list.get(here.at());
        var second = first.deepCopy();
        second.remove("note");
        boolean fills = !here.hasWidth()
                && bays.across().stream().filter(other -> !other.hasWidth()).count() == 1;
        first.set(WIDTH, tape.written(left));
        if (!fills) {
            second.set(WIDTH, tape.written(here.width() - panel - left));
        }
        list.insert(right(), second);
        return done("Split " + here.name() + " in two", list, here.at());
    }

    Deed remove() {
        var what = "Remove " + here.name();
        boolean within = bays.pointer().contains("/contents/");
        int least = within ? 2 : 1;
        if (bays.across().size() <= least) {
            return Deed.impossible(
                    what,
                    within
                            ? "A divided part has two bays or more. Remove or remake the part itself."
                            : "It is the only bay of the stand.");
        }
        ArrayNode list = bays.written().deepCopy();
        list.remove(here.at());
        int next = Math.min(here.at(), list.size() - 1);
        if (allGiven(list)) {
            ((ObjectNode) list.get(next)).remove(WIDTH);
        }
        return done(what, list, next);
    }

    /** @param by 1 to the right, -1 to the left */
    Deed swapped(int by) {
        int to = bay + by;
        if (to < 0 || to == bays.across().size()) {
            return Deed.impossible(
                    "Swap " + here.name(), "There is no bay to the " + (by < 0 ? "left" : "right") + " of it.");
        }
        var other = bays.across().get(to);
        return Deed.of(
                "Swap " + here.name() + " and " + other.layout().name(),
                JsonEdit.move(text, bays.pointer(), here.at(), other.at()),
                other.pointer());
    }

    /** Place in the file's list of a bay to the right of this one. */
    private int right() {
        return design.layout() == Layout.MIRRORED ? here.at() : here.at() + 1;
    }

    private static boolean allGiven(ArrayNode list) {
        return StreamSupport.stream(list.spliterator(), false).allMatch(bay -> bay.has(WIDTH));
    }

    private Deed done(String what, ArrayNode list, int then) {
        return Deed.of(
                what,
                Differences.written(text, bays.pointer(), bays.written(), list),
                Pointer.child(bays.pointer(), then));
    }
}
