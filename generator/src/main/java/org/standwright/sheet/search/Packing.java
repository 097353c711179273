package org.standwright.sheet.search;

import java.util.List;
import org.standwright.sheet.job.CutTree;

/**
 * An answer to a packing job.
 *
 * @param cost of its boards, as their kinds say
 * @param offcut area of the largest rest, kerf taken off, units²
 */
public record Packing(List<CutTree> boards, long cost, long offcut) {
    public Packing {
        boards = List.copyOf(boards);
    }
}
