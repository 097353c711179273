package org.standwright.design.column;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.Content;

/**
 * Contents of a bay that share one opening: drawers that follow each other, or one content of any other kind.
 *
 * @param first place of the first of them in the bay
 */
record Section(int first, List<Content> contents) {
    Section {
        contents = List.copyOf(contents);
    }

    /** From top to bottom. */
    static List<Section> of(List<Content> contents) {
        var sections = new ArrayList<Section>();
        int first = 0;
        while (first < contents.size()) {
            int end = first + 1;
            while (isDrawers(contents.get(first)) && end < contents.size() && isDrawers(contents.get(end))) {
                end++;
            }
            sections.add(new Section(first, contents.subList(first, end)));
            first = end;
        }
        return sections;
    }

    boolean isDrawers() {
        return isDrawers(contents.get(0));
    }

    private static boolean isDrawers(Content content) {
        return content instanceof Content.GivenDrawers
                || content instanceof Content.EqualDrawers
                || content instanceof Content.GraduatedDrawers
                || content instanceof Content.FillDrawers;
    }
}
