package org.standwright.design.column;

/** Whose the panel beside an opening is: how much of its edge an overlay front may cover. */
enum Wall {
    /** A side, the bottom or the sub-top: all of it. */
    OUTER,
    /** A partition or a divider with a neighbour behind it: half of it. */
    SHARED
}
