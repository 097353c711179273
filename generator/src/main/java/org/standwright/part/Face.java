package org.standwright.part;

/** The two large faces of a board. */
public enum Face {
    /** z = 0: lies down on the bench. */
    BENCH,
    /** z = thickness: the face to be seen. */
    SHOW;

    public Face opposite() {
        return this == BENCH ? SHOW : BENCH;
    }
}
