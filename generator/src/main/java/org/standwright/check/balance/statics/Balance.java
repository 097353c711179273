package org.standwright.check.balance.statics;

import java.util.Comparator;
import java.util.function.Function;

/**
 * How a stand balances about the edge over which it tips soonest.
 *
 * @param edge that edge
 * @param moments about it
 */
public record Balance(TippingEdge edge, Moments moments) {
    /** Of all edges the one with the least ratio. */
    public static Balance worst(SupportPolygon polygon, Function<TippingEdge, Moments> about) {
        return polygon.edges().stream()
                .map(edge -> new Balance(edge, about.apply(edge)))
                .min(Comparator.comparingDouble(Balance::ratio))
                .orElseThrow();
    }

    public double ratio() {
        return moments.ratio();
    }
}
