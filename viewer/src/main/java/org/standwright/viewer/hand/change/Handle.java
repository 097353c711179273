package org.standwright.viewer.hand.change;

import org.standwright.geom.Rect;

/** Something that can be dragged. Its frame is that of the picture: x to the right, y upwards, mm. */
public interface Handle {
    /** Where it goes. */
    enum Way {
        UP_AND_DOWN,
        LEFT_AND_RIGHT,
        ANYWHERE
    }

    /** The same for the same handle after an edit. */
    String key();

    /** What it is: 'the gap between drawer 1.2 and 1.3'. */
    String words();

    Rect area();

    Way way();

    /** Dragged this far from where it was, mm; held within its limits and on a mark of the tape. */
    Move dragged(double right, double up);

    /** Moved by so many of its steps. */
    Move nudged(int right, int up);

    /** What an edit with it is called: 'Move the gap between drawer 1.2 and 1.3'. */
    default String deed() {
        return "Move " + words();
    }
}
