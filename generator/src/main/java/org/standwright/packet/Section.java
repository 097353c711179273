package org.standwright.packet;

import org.standwright.design.built.Furniture;
import org.standwright.packet.page.Flow;

/**
 * One part of the packet.
 *
 * @param <F> kind of furniture that it is printed for; {@link Furniture} where it serves any
 */
interface Section<F extends Furniture> {
    void print(Contents<? extends F> contents, Flow flow);
}
