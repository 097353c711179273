package org.standwright.check.balance.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.standwright.geom.Vec3;

/**
 * One way in which a stand may tip.
 *
 * @param polygon what it stands on
 * @param choices of which one position each acts: of a bay whose drawers open one at a time, each drawer open
 * @param weight what a body's weight does about an edge
 * @param forces of which the worst one acts about an edge; none where only weights act
 */
public record TippingCase(
        SupportPolygon polygon,
        List<List<Bodies>> choices,
        Weighing weight,
        Function<TippingEdge, List<Moments>> forces) {
    public TippingCase {
        choices = List.copyOf(choices);
    }

    /** What a body's weight does about an edge: {@link TippingEdge#of(Body)} on a level floor. */
    public interface Weighing {
        Moments of(Body body, TippingEdge edge);
    }

    /** Weights alone, on a level floor. */
    public static TippingCase standing(SupportPolygon polygon, List<List<Bodies>> choices) {
        return new TippingCase(polygon, choices, (body, edge) -> edge.of(body), edge -> List.of());
    }

    /** The same with a force besides, the worst of those that {@code forces} says for an edge. */
    public TippingCase with(Function<TippingEdge, List<Moments>> others) {
        return new TippingCase(polygon, choices, weight, others);
    }

    /** The same where a body's weight acts otherwise: on a slope, or as a share of a tip angle. */
    public TippingCase weighing(Weighing other) {
        return new TippingCase(polygon, choices, other, forces);
    }

    /** The same on other edges. */
    public TippingCase on(SupportPolygon other) {
        return new TippingCase(other, choices, weight, forces);
    }

    /** The same with everything in it, whether it tips or holds. */
    public TippingCase full() {
        return new TippingCase(polygon, each(Bodies::full), weight, forces);
    }

    /** The same with nothing in it. */
    public TippingCase empty() {
        return new TippingCase(polygon, each(Bodies::empty), weight, forces);
    }

    private List<List<Bodies>> each(UnaryOperator<Bodies> change) {
        return choices.stream()
                .map(choice -> choice.stream().map(change).toList())
                .toList();
    }

    /** The edge over which it tips soonest, with the worst filling. */
    public Balance worst() {
        return Balance.worst(polygon, edge -> LeastRatio.of(about(edge)));
    }

    /** Moment that is missing for a ratio about one edge, N mm. */
    public double missing(double ratio, TippingEdge edge) {
        return LeastRatio.missing(ratio, about(edge));
    }

    /**
     * Ballast that brings it to a ratio about every edge, kg; nothing where no ballast there helps.
     *
     * @param at where the ballast lies
     * @param step that it comes in, kg
     */
    public OptionalDouble ballast(double ratio, Vec3 at, double step) {
        double most = 0;
        for (var edge : polygon.edges()) {
            double missing = missing(ratio, edge);
            double each = weight.of(new Body(1, at), edge).balance(ratio);
            if (missing > 0 && each <= 0) {
                return OptionalDouble.empty();
            }
            most = Math.max(most, missing > 0 ? missing / each : 0);
        }
        return OptionalDouble.of(step * StrictMath.ceil(most / step));
    }

    private List<List<Loading>> about(TippingEdge edge) {
        var loadings = new ArrayList<List<Loading>>();
        for (var choice : choices) {
            loadings.add(choice.stream()
                    .map(bodies -> bodies.loading(body -> weight.of(body, edge)))
                    .toList());
        }
        loadings.add(forces.apply(edge).stream().map(Loading::sure).toList());
        return loadings;
    }
}
