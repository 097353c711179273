package org.standwright.design.door;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.standwright.design.Shelves;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.kit.Hinge;
import org.standwright.geom.Grid;

/**
 * What meets the screws of a butt hinge from the other face of its upright: the edges of level panels and fixed shelves
 * with their joints, and other butt hinges. Slides, plates and shelf pins lie farther back.
 */
record FarFace(List<BayLayout> bays, double panel) {
    /** Whether anything at the face in the plane {@code x} lies between these heights. */
    boolean meets(double x, double low, double high) {
        return bays.stream()
                .flatMap(bay -> bay.leaves().stream())
                .flatMap(section -> Stream.concat(panels(section, x), hinges(section, x)))
                .anyMatch(span -> Grid.less(low, span.high()) && Grid.less(span.low(), high));
    }

    private Stream<Span> panels(SectionLayout section, double x) {
        var opening = section.opening();
        if (!Grid.same(opening.x0(), x) && !Grid.same(opening.x1(), x)) {
            return Stream.empty();
        }
        var ends = DoubleStream.of(opening.y0() - panel, opening.y1());
        return DoubleStream.concat(ends, fixed(section).stream().mapToDouble(shelf -> opening.y0() + shelf))
                .mapToObj(under -> new Span(under, under + panel));
    }

    private static List<Double> fixed(SectionLayout section) {
        if (section instanceof SectionLayout.Open open
                && open.kind().filter(Shelves.Kind.FIXED::equals).isPresent()) {
            return open.shelves();
        }
        return section instanceof SectionLayout.Closed closed
                        && closed.kind().filter(Shelves.Kind.FIXED::equals).isPresent()
                ? closed.shelves()
                : List.of();
    }

    private static Stream<Span> hinges(SectionLayout section, double x) {
        if (!(section instanceof SectionLayout.Closed closed)) {
            return Stream.empty();
        }
        return closed.doors().stream()
                .filter(door -> door.hinge() instanceof Hinge.Butt)
                .filter(door -> Grid.same(DoorHinges.wall(door, closed.opening()), x))
                .flatMap(door -> door.hinges().stream()
                        .map(height -> Span.around(door.front().y0() + height, ((Hinge.Butt) door.hinge()).length())));
    }

    private record Span(double low, double high) {
        static Span around(double middle, double length) {
            return new Span(middle - length / 2, middle + length / 2);
        }
    }
}
