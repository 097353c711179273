package org.standwright.sheet.search;

import java.util.List;

/**
 * What a search came to.
 *
 * @param answers one from each lane, of equal cost unless clearing an offcut saved a board
 * @param bound no plan costs less
 */
public record Found(List<Packing> answers, long bound) {
    public Found {
        answers = List.copyOf(answers);
    }
}
