package org.standwright.packet;

import org.standwright.packet.page.Flow;

/** One part of the packet. */
interface Section {
    void print(Contents contents, Flow flow);
}
