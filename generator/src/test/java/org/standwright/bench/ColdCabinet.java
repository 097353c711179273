package org.standwright.bench;

import org.standwright.solid.Fineness;
import org.standwright.solid.SampleCabinet;
import org.standwright.solid.Solids;

/** Prints what the solids of a cabinet take on one thread the first time that Java builds any, ms. */
final class ColdCabinet {
    private ColdCabinet() {}

    public static void main(String[] args) {
        var parts = SampleCabinet.parts(0);
        long start = System.nanoTime();
        parts.forEach(part -> Solids.of(part, Fineness.FILE));
        System.out.println((System.nanoTime() - start) / 1e6);
    }
}
