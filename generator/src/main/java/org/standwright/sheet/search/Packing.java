package org.standwright.sheet.search;

import java.util.List;
import org.standwright.sheet.job.CutTree;

/**
 * An answer to a packing job.
 *
 * @param cost of its boards, as their kinds say
 */
public record Packing(List<CutTree> boards, long cost) {
    public Packing {
        boards = List.copyOf(boards);
    }
}
