package org.standwright.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.function.ToLongFunction;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;
import org.standwright.solid.SampleCabinet;

/** Builds the solids of 500 different parts and prints the heap that they took at most and that they keep, MB. */
final class HeapPeak {
    private HeapPeak() {}

    public static void main(String[] args) {
        var solids = AssemblySolids.of(SampleCabinet.pile(500), Fineness.FILE);
        double peak = peak();
        System.gc();
        double kept = heap(pool -> pool.getUsage().getUsed());
        if (solids.solids().size() != 500) {
            throw new IllegalStateException("built " + solids.solids().size() + " solids");
        }
        System.out.println(peak + " " + kept);
    }

    /** What the heap took at most so far, MB. Each pool had its peak at another time: their sum is never too little. */
    static double peak() {
        return heap(pool -> pool.getPeakUsage().getUsed());
    }

    private static double heap(ToLongFunction<MemoryPoolMXBean> used) {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                        .filter(pool -> pool.getType() == MemoryType.HEAP)
                        .mapToLong(used)
                        .sum()
                / 1e6;
    }
}
