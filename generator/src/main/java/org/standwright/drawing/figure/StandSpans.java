package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.drawing.figure.DimensionChain.Span;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** What is dimensioned on a stand, as spans on paper. */
record StandSpans(Stand stand, Scale scale) {
    /** Terms of the height stack from the floor up. */
    List<Span> stack() {
        var spans = new ArrayList<Span>();
        double z = 0;
        for (var layer : printed().layers()) {
            double top = z + layer.height();
            if (layer.height() > 0) {
                spans.add(span(z, top));
            }
            z = top;
        }
        return spans;
    }

    private PrintedStack printed() {
        return PrintedStack.of(stand.stack(), stand.design().unit());
    }

    List<Span> workingHeight() {
        return List.of(span(0, printed().sum().height()));
    }

    /**
     * Fronts of drawers and doors and openings without any, at the left or right edge of a bay; what lies between them
     * is left without figures.
     *
     * @param ends which of two neighbours stands at that edge
     */
    List<Span> heights(BayLayout bay, Ends ends) {
        return bay.sections().stream()
                .flatMap(section -> heights(section, ends))
                .sorted(Comparator.comparingDouble(Span::from))
                .toList();
    }

    private Stream<Span> heights(SectionLayout section, Ends ends) {
        if (section instanceof SectionLayout.Drawers drawers) {
            return drawers.drawers().stream().map(drawer -> height(drawer.front()));
        }
        if (section instanceof SectionLayout.Closed closed) {
            return Stream.of(height(ends.of(closed.doors()).front()));
        }
        return section instanceof SectionLayout.Divided divided
                ? heights(ends.of(divided.bays()), ends).stream()
                : Stream.of(height(section.opening()));
    }

    private Span height(Rect area) {
        return span(area.y0(), area.y1());
    }

    /** The first or the last of things in a row from left to right. */
    enum Ends {
        LEFT,
        RIGHT;

        <T> T of(List<T> row) {
            return row.get(this == LEFT ? 0 : row.size() - 1);
        }
    }

    /** Where the machine's base lies between the worktop's left and right edge; nothing without a machine. */
    List<Span> baseAcross() {
        return stand.machine()
                .map(machine -> between(DoubleStream.of(
                        stand.worktop().min().x(),
                        machine.base().min().x(),
                        machine.base().max().x(),
                        stand.worktop().max().x())))
                .orElse(List.of());
    }

    /** Where the machine's base lies between the worktop's front and rear edge; nothing without a machine. */
    List<Span> baseAlong() {
        return stand.machine()
                .map(machine -> between(DoubleStream.of(
                        stand.worktop().min().y(),
                        machine.base().min().y(),
                        machine.base().max().y(),
                        stand.worktop().max().y())))
                .orElse(List.of());
    }

    List<Span> openingHeight(BayLayout bay) {
        return List.of(span(bay.opening().y0(), bay.opening().y1()));
    }

    /** Sides, openings and partitions across the carcass. */
    List<Span> openings() {
        var carcass =
                DoubleStream.of(stand.carcass().min().x(), stand.carcass().max().x());
        var openings = stand.bays().stream()
                .flatMapToDouble(
                        bay -> DoubleStream.of(bay.opening().x0(), bay.opening().x1()));
        return between(DoubleStream.concat(carcass, openings));
    }

    List<Span> widths() {
        return List.of(span(stand.carcass().min().x(), stand.carcass().max().x()));
    }

    List<Span> worktopWidth() {
        return List.of(span(stand.worktop().min().x(), stand.worktop().max().x()));
    }

    /**
     * Worktop, fronts, carcass and back, from front to back; each figure is the difference of two printed distances
     * from the rear, so that they add up to {@link #wholeDepth}.
     */
    List<Span> depths() {
        double rear = Math.max(stand.worktop().max().y(), stand.carcass().max().y());
        var units = stand.design().unit();
        return between(DoubleStream.of(
                        stand.worktop().min().y(),
                        fronts(),
                        stand.carcass().min().y(),
                        stand.carcass().max().y(),
                        stand.worktop().max().y()))
                .stream()
                .map(span -> new Span(
                        span.from(),
                        span.to(),
                        units.bareLength(units.shown(rear - span.from() * scale.times())
                                - units.shown(rear - span.to() * scale.times()))))
                .toList();
    }

    /** From the foremost of worktop and fronts to the rear. */
    List<Span> wholeDepth() {
        double front = Math.min(stand.worktop().min().y(), fronts());
        return List.of(span(
                front, Math.max(stand.worktop().max().y(), stand.carcass().max().y())));
    }

    List<Span> worktopDepth() {
        return List.of(span(stand.worktop().min().y(), stand.worktop().max().y()));
    }

    List<Span> woodHeight() {
        return List.of(span(0, stand.worktop().max().z()));
    }

    /** Foremost face of drawer fronts and doors, or of the carcass. */
    private double fronts() {
        double top = stand.carcass().max().z();
        return stand.assembly().parts().stream()
                .map(part -> part.box())
                .filter(box -> Grid.less(box.min().z(), top))
                .mapToDouble(box -> box.min().y())
                .min()
                .orElse(stand.carcass().min().y());
    }

    private List<Span> between(DoubleStream places) {
        var stops = new ArrayList<Double>();
        places.sorted().forEach(place -> {
            if (stops.isEmpty() || Grid.less(stops.get(stops.size() - 1), place)) {
                stops.add(place);
            }
        });
        var spans = new ArrayList<Span>();
        for (int i = 1; i < stops.size(); i++) {
            spans.add(span(stops.get(i - 1), stops.get(i)));
        }
        return spans;
    }

    private Span span(double from, double to) {
        return new Span(
                scale.paper(from), scale.paper(to), stand.design().unit().bareLength(to - from));
    }
}
