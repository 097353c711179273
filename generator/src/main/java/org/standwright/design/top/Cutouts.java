package org.standwright.design.top;

import java.util.List;
import org.standwright.design.Cutout;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Rect;

/** Where the design's cut-outs lie in the assembly. */
final class Cutouts {
    private final Frame frame;

    Cutouts(Frame frame) {
        this.frame = frame;
    }

    /** All that go through the worktop and its sub-top, or through the back. */
    List<Opening> in(Cutout.In board) {
        return frame.design().cutouts().stream()
                .filter(cutout -> cutout.in() == board)
                .map(this::opening)
                .toList();
    }

    Opening opening(Cutout cutout) {
        boolean level = cutout.in() == Cutout.In.WORKTOP;
        var seen = level ? Seen.FROM_ABOVE : Seen.FROM_FRONT;
        double y = level ? cutout.y() : frame.floorToCarcass() + cutout.y();
        if (cutout instanceof Cutout.Round round) {
            return Opening.round(seen, cutout.x(), y, round.diameter(), cutout.use());
        }
        var size = (Cutout.Rectangular) cutout;
        double half = size.width() / 2;
        var area = new Rect(cutout.x() - half, y - size.height() / 2, cutout.x() + half, y + size.height() / 2);
        return Opening.rectangular(seen, area, size.radius(), cutout.use());
    }
}
