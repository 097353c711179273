package org.standwright.viewer.hand.change;

import java.util.List;
import org.standwright.geom.Rect;

/**
 * Where something was moved to.
 *
 * @param text of the file with it
 * @param sizes in words, to be read while it is moved: 'drawer 1.2: 140 mm'
 * @param area that what is moved takes then, in the frame of the picture, mm
 */
public record Move(String text, List<String> sizes, Rect area) {
    public Move {
        sizes = List.copyOf(sizes);
    }
}
