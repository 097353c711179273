package org.standwright.check.balance.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What a stand, or one bay of it, weighs in one position of its drawers and doors.
 *
 * @param sure what is always there
 * @param contents what may be there
 */
public record Bodies(List<Body> sure, List<Body> contents) {
    public Bodies {
        sure = List.copyOf(sure);
        contents = List.copyOf(contents);
    }

    /** With everything in it, nothing left out. */
    public Bodies full() {
        var all = new ArrayList<>(sure);
        all.addAll(contents);
        return new Bodies(all, List.of());
    }

    /** With nothing in it. */
    public Bodies empty() {
        return new Bodies(sure, List.of());
    }

    Loading loading(Function<Body, Moments> moments) {
        return new Loading(
                sure.stream().map(moments).reduce(Moments.NONE, Moments::plus),
                contents.stream().map(moments).toList());
    }
}
