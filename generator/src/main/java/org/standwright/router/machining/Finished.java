package org.standwright.router.machining;

import org.standwright.geom.Loop;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.part.Contour;
import org.standwright.part.Part;
import org.standwright.part.Pocket;

/** Lines of a part as it is built in, without what a bit needs. */
public final class Finished {
    private Finished() {}

    /** Its contour, or the rectangle that it is. */
    public static Outline outline(Part part) {
        return part.contour()
                .map(Contour::outline)
                .orElseGet(() -> Outline.of(new Rect(0, 0, part.length(), part.width())));
    }

    /** The line round a pocket; where it lies on the part's edge, its corners are square. */
    public static Loop of(Pocket pocket, Part part) {
        var sunk = Sunk.finished(pocket, part);
        return sunk.loop(sunk.designed());
    }
}
