package org.standwright.check.balance.statics;

import java.util.List;

/**
 * What is sure to act about an edge, and contents that may be there or not.
 *
 * @param sure moments of all that is always there
 * @param contents moments of each thing that may be there
 */
public record Loading(Moments sure, List<Moments> contents) {
    public Loading {
        contents = List.copyOf(contents);
    }

    public static Loading sure(Moments moments) {
        return new Loading(moments, List.of());
    }

    /** With those contents that tip more than {@code ratio} times they hold. */
    Moments worstAt(double ratio) {
        return contents.stream().filter(content -> content.balance(ratio) < 0).reduce(sure, Moments::plus);
    }
}
