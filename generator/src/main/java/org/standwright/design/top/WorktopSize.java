package org.standwright.design.top;

import org.standwright.design.frame.Frame;
import org.standwright.geom.Rect;

/** Where the worktop lies, in the assembly frame, mm. */
final class WorktopSize {
    private WorktopSize() {}

    /** Its outline seen from above: the carcass and the overhang. */
    static Rect outline(Frame frame) {
        var over = frame.design().worktop().overhang();
        return new Rect(-over.left(), -over.front(), frame.width() + over.right(), frame.depth() + over.back());
    }

    /** Thickness of all its layers. */
    static double thickness(Frame frame) {
        return frame.design().worktop().layers() * layer(frame);
    }

    /** Thickness of one layer. */
    static double layer(Frame frame) {
        return frame.design().worktop().sheet().material().thickness();
    }

    /** Height of its upper face above the floor. */
    static double top(Frame frame) {
        return frame.top() + thickness(frame);
    }
}
