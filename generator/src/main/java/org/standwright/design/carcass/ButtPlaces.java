package org.standwright.design.carcass;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.standwright.geom.Grid;

/**
 * Where the fasteners of one butt sit behind the front edge: one near either end, others evenly between them. One that
 * would meet another bore moves along by steps of its diameter; only where nothing is free for a whole spacing do two
 * stand farther apart.
 */
final class ButtPlaces {
    /** From an end to the first fastener, mm; common practice, no source. */
    private static final double FROM_END = 50;
    /** Diameters from an end at least (references 7.3, common practice, no source), and between two. */
    private static final double DIAMETERS = 3;

    private final Butt butt;
    private final Fastening fastening;
    private final double first;
    private final double last;

    /**
     * @param depth that the two panels share, from the front edge back, mm
     */
    ButtPlaces(Butt butt, Fastening fastening, double depth) {
        this.butt = butt;
        this.fastening = fastening;
        this.first = Math.max(DIAMETERS * fastening.diameter(), Math.min(FROM_END, depth / 4));
        this.last = depth - first;
    }

    /** From the front back, mm; one or none where there is no room for more. */
    List<Double> places() {
        var places = new ArrayList<Double>();
        var next = nearest(first, first, last);
        while (next.isPresent()) {
            double place = next.getAsDouble();
            places.add(place);
            next = after(place);
        }
        return places;
    }

    private OptionalDouble after(double place) {
        double left = last - place;
        double least = place + DIAMETERS * fastening.diameter();
        if (Grid.less(left, DIAMETERS * fastening.diameter())) {
            return OptionalDouble.empty();
        }
        int steps = (int) StrictMath.ceil(left / fastening.spacing() - 1e-9);
        double wanted = steps == 1 ? last : place + left / steps;
        double most = Math.min(last, place + fastening.spacing());
        var near = nearest(wanted, least, most);
        return near.isPresent() ? near : nearest(most, most, last);
    }

    /** The free place nearest to the wanted one, by whole steps, between these two. */
    private OptionalDouble nearest(double wanted, double from, double to) {
        double step = fastening.diameter();
        int steps = (int) StrictMath.ceil(Math.max(0, to - from) / step);
        return IntStream.rangeClosed(-steps, steps)
                .boxed()
                .sorted(Comparator.comparingInt(Math::abs))
                .mapToDouble(count -> wanted + count * step)
                .filter(place -> !Grid.less(place, from) && !Grid.less(to, place))
                .filter(place -> butt.isFree(fastening, place))
                .findFirst();
    }
}
