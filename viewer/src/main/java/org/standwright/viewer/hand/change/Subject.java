package org.standwright.viewer.hand.change;

import java.util.Optional;

/**
 * What is edited by hand, as it stands.
 *
 * @param <A> what may be done to it
 */
public interface Subject<A> {
    Picture picture();

    /** What comes of an action on the thing with this key. */
    Deed deed(A action, String key);

    /**
     * What the keyboard moves when a thing is picked.
     *
     * @param way left and right, or up and down
     * @param edge whether one of its edges rather than all of it
     */
    Optional<Handle> handle(String key, Handle.Way way, boolean edge);
}
