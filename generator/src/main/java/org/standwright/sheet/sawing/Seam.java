package org.standwright.sheet.sawing;

import java.util.List;

/**
 * What a saw does with the gap between two strips, counted from the lower one's edge.
 *
 * @param cuts from and to, one or two
 * @param overBefore left on the lower strip
 * @param overAfter left on the upper strip
 */
record Seam(List<Cut> cuts, int overBefore, int overAfter) {
    /** One cut's kerf. */
    record Cut(int from, int to) {}

    /** By the saw itself: true along the lower strip. */
    static Seam sawn(int gap, int there, int kerf) {
        int end = Math.min(there, kerf);
        return new Seam(List.of(new Cut(0, end)), 0, gap - end);
    }

    /**
     * By a hand-held saw.
     *
     * @param before whether the lower strip keeps an allowance; without one the cut runs along its edge
     * @param after the same of the upper strip
     */
    static Seam between(boolean before, boolean after, int gap, Blades blades) {
        int kerf = Math.min(blades.handKerf(), gap);
        int start = before ? (after ? Math.min(blades.allowance(), gap - kerf) : gap - kerf) : 0;
        int end = start + kerf;
        if (before || after || end == gap) {
            return new Seam(List.of(new Cut(start, end)), start, gap - end);
        }
        return new Seam(List.of(new Cut(start, end), new Cut(Math.max(end, gap - kerf), gap)), 0, 0);
    }

    /**
     * By a hand-held saw along the last strip, beside what nobody asked for.
     *
     * @param there from the strip's edge to the panel's
     */
    static Seam beforeLeft(boolean before, int gap, int there, Blades blades) {
        int start = before && blades.allowance() < there ? blades.allowance() : 0;
        int end = Math.min(there, start + blades.handKerf());
        return new Seam(List.of(new Cut(start, end)), start, gap - end);
    }
}
