package org.standwright.packet;

/** One part of the packet. */
interface Section {
    void print(Contents contents, Flow flow);
}
