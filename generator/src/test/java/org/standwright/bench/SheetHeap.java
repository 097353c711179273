package org.standwright.bench;

import org.standwright.sheet.plan.SheetJob;

/** Plans a job of 2,000 parts with the usual effort and prints the heap that it took at most, MB. */
final class SheetHeap {
    private SheetHeap() {}

    public static void main(String[] args) {
        SheetJob.random(1, 2000).plan();
        System.out.printf("%.0f%n", HeapPeak.peak());
    }
}
