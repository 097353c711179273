package org.standwright.viewer.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.file.form.Row;

/** Which view showed which entry of a list that has changed: the same value, or else what is left, in order. */
final class Matching {
    private Matching() {}

    static List<Optional<EntryView>> of(List<EntryView> views, List<Row> rows) {
        var left = new ArrayList<>(views);
        var found = new ArrayList<Optional<EntryView>>();
        for (var row : rows) {
            var same = left.stream()
                    .filter(view -> view.row().json().equals(row.json()))
                    .findFirst();
            same.ifPresent(left::remove);
            found.add(same);
        }
        if (rows.size() == views.size()) {
            fill(found, left);
        }
        return found;
    }

    /** One entry has changed: its view is the one that is left. */
    private static void fill(List<Optional<EntryView>> found, List<EntryView> left) {
        for (int i = 0; i < found.size(); i++) {
            if (found.get(i).isEmpty()) {
                found.set(i, Optional.of(left.remove(0)));
            }
        }
    }
}
