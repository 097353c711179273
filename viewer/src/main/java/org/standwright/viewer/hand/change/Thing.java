package org.standwright.viewer.hand.change;

import java.util.List;
import java.util.Optional;
import org.standwright.geom.Rect;

/**
 * Something in a picture that can be picked.
 *
 * @param key the same for the same thing after an edit
 * @param title that stands in it: '1.2'
 * @param detail that stands beside it where there is room: '140 mm'
 * @param words for those who do not see it: 'drawer 1.2, front 140 mm high'
 * @param look style class
 * @param area in the frame of the picture: x to the right, y upwards, mm
 * @param around key of what it is a part of; empty at the top
 * @param label of its part in the assembly, for other panes; empty where it has none
 * @param groups what the labels of all its parts start with
 */
public record Thing(
        String key,
        String title,
        String detail,
        String words,
        String look,
        Rect area,
        Optional<String> around,
        Optional<String> label,
        List<String> groups) {
    public Thing {
        groups = List.copyOf(groups);
    }

    /** Whether a part belongs to it. */
    public boolean has(String part) {
        return groups.stream().anyMatch(group -> part.equals(group) || part.startsWith(group + " "));
    }
}
