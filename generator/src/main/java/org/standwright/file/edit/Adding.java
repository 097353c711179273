package org.standwright.file.edit;

import java.util.List;

/** Puts a further entry into an object or a list, laid out like its neighbours. */
final class Adding {
    private final String text;
    private final Style style;

    Adding(String text, Written root) {
        this.text = text;
        this.style = Style.of(text, root);
    }

    /**
     * The text with a field at the end of an object.
     *
     * @param keys of the field and of the objects that are made inside it
     */
    String field(Written object, List<String> keys, String json) {
        int last = object.members().size() - 1;
        var colon =
                last < 0 ? style.colon() : Style.colon(text, object.members().get(last));
        var value = json;
        for (int key = keys.size() - 1; key > 0; key--) {
            value = "{" + style.pad() + JsonEdit.quoted(keys.get(key)) + style.colon() + value + style.pad() + "}";
        }
        var entry = JsonEdit.quoted(keys.get(0)) + (Lines.isOne(colon) ? colon : style.colon()) + value;
        return entry(object, last + 1, entry);
    }

    /** The text with an entry at a place among the others, from 0 to their number. */
    String entry(Written around, int place, String entry) {
        var members = around.members();
        if (members.isEmpty()) {
            return spliced(around.start() + 1, around.end() - 1, alone(around, entry));
        }
        var gap = gap(around);
        if (place == members.size()) {
            int end = members.get(place - 1).end();
            return spliced(end, end, "," + gap + entry);
        }
        int start = members.get(place).start();
        return spliced(start, start, entry + "," + gap);
    }

    /** An entry between its brackets, which may stand on lines of their own. */
    private String alone(Written around, String entry) {
        var inside = text.substring(around.start() + 1, around.end() - 1);
        if (!Lines.isOne(inside)) {
            var outer = style.newLine() + Lines.indent(text, around.start());
            return outer + style.indent() + entry + outer;
        }
        var pad = around.shape() == Written.Shape.OBJECT ? style.pad() : "";
        return pad + entry + pad;
    }

    /** What follows a comma. */
    private String gap(Written around) {
        var members = around.members();
        int last = members.size() - 1;
        int start = last == 0 ? around.start() + 1 : members.get(last - 1).end();
        var before = text.substring(start, members.get(last).start());
        var after = before.substring(before.indexOf(',') + 1);
        if (!Lines.isOne(after)) {
            return Lines.lastBreak(after);
        }
        return last == 0 ? style.gap() : after;
    }

    private String spliced(int start, int end, String with) {
        return text.substring(0, start) + with + text.substring(end);
    }
}
