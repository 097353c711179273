package org.standwright.drawing.holder;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.wall.Cleat;
import org.standwright.drawing.figure.DimensionChain.Span;
import org.standwright.drawing.figure.RunningDimensions.Stop;
import org.standwright.drawing.figure.Scale;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Contour;
import org.standwright.unit.Units;

/** What is dimensioned on a holder, on paper. */
record HolderStops(EqualHolders holder, List<Bored> bored, Cleat cleat, Units units, Scale scale) {
    /** One place with what is there. */
    private record Named(double at, String name) {}

    /** Distances in one line, and what they are of. */
    record Line(String name, List<Stop> stops) {}

    /** Faces of boards that stand square to the wall, from the left edge. */
    List<Stop> uprights() {
        return stops(
                holder.before().stream()
                        .filter(board ->
                                Grid.same(board.box().size().x(), board.part().thickness()))
                        .flatMap(board -> Stream.of(
                                new Named(board.box().min().x(), ""),
                                new Named(board.box().max().x(), ""))),
                x -> x);
    }

    /** Middles of screws, bores and slots, from the left edge; those of one kind in a line, lines that agree as one. */
    List<Line> across() {
        var lines = new ArrayList<Line>();
        for (var what : kinds()) {
            var stops = stops(places(what).map(at -> new Named(at.x(), "")), x -> x);
            var same = lines.stream().filter(line -> line.stops().equals(stops)).findFirst();
            same.ifPresent(lines::remove);
            lines.add(new Line(same.map(line -> line.name() + ", " + what).orElse(what), stops));
        }
        return lines;
    }

    /** Heights of screws and bores seen from the room, from the upper edge of the back. */
    List<Stop> fromTop() {
        double top = holder.made().back().y1();
        return stops(
                bored.stream()
                        .filter(hole -> hole.look() != Bored.Look.CUTOUT)
                        .map(hole -> new Named(hole.at().z(), hole.what())),
                z -> top - z);
    }

    /** Of all that is before the back, from the back's lower edge. */
    List<Stop> heights() {
        return stops(
                holder.before().stream()
                        .flatMapToDouble(HolderStops::heights)
                        .filter(z -> !Grid.same(z, foot()))
                        .mapToObj(z -> new Named(z, "")),
                this::fromFoot);
    }

    private static DoubleStream heights(PlacedPart board) {
        var corners = board.part().features().stream()
                .filter(Contour.class::isInstance)
                .flatMap(contour -> ((Contour) contour).outline().corners().stream())
                .mapToDouble(corner -> board.placement()
                        .apply(new Vec3(corner.x(), corner.y(), 0))
                        .z());
        return DoubleStream.concat(
                DoubleStream.of(board.box().min().z(), board.box().max().z()), corners);
    }

    /** Of what is behind the back, from the back's lower edge. */
    List<Stop> behind() {
        var places = new ArrayList<>(List.of(
                new Named(foot(), "back's lower edge"),
                new Named(0, "strip's high edge"),
                new Named(2 * cleat.blunt() - cleat.rise(), "hanger's lower tip"),
                new Named(holder.made().back().y1(), "upper edges")));
        holder.boards().stream()
                .filter(board -> holder.label(board).equals("spacer"))
                .forEach(board -> places.add(new Named(board.box().max().z(), "spacer")));
        return stops(places.stream(), this::fromFoot);
    }

    /** Of all boards, bores and slots, from the wall's surface; without the foremost. */
    List<Stop> depths() {
        double front = holder.box().min().y();
        var boards = holder.boards().stream()
                .flatMapToDouble(board ->
                        DoubleStream.of(board.box().min().y(), board.box().max().y()));
        var cutouts = bored.stream()
                .filter(hole -> hole.look() == Bored.Look.CUTOUT)
                .mapToDouble(hole -> hole.at().y());
        return stops(
                DoubleStream.concat(boards, cutouts)
                        .filter(y -> Grid.less(front, y))
                        .mapToObj(y -> new Named(y, "")),
                y -> Math.abs(y));
    }

    List<Span> wholeWidth() {
        return List.of(span(holder.box().min().x(), holder.box().max().x()));
    }

    List<Span> wholeHeight() {
        return List.of(span(holder.box().min().z(), holder.box().max().z()));
    }

    /** Of its boards, from the wall's surface. */
    List<Span> wholeDepth() {
        return List.of(span(holder.box().min().y(), 0));
    }

    private Stream<Vec3> places(String what) {
        return bored.stream().filter(hole -> hole.what().equals(what)).map(Bored::at);
    }

    private List<String> kinds() {
        return bored.stream().map(Bored::what).distinct().toList();
    }

    private double foot() {
        return holder.made().back().y0();
    }

    private double fromFoot(double z) {
        return z - foot();
    }

    /** Each place once, with all that is there. */
    private List<Stop> stops(Stream<Named> places, DoubleUnaryOperator distance) {
        var sorted = new TreeMap<Double, List<Named>>();
        for (var place : places.toList()) {
            double at = Math.rint(place.at() / Grid.STEP) * Grid.STEP;
            sorted.computeIfAbsent(at, first -> new ArrayList<>()).add(place);
        }
        return sorted.entrySet().stream()
                .map(entry -> new Stop(
                        scale.paper(entry.getKey()), words(distance.applyAsDouble(entry.getKey()), entry.getValue())))
                .toList();
    }

    private String words(double distance, List<Named> places) {
        var names = places.stream().map(Named::name).distinct().collect(Collectors.joining(", "));
        var length = units.bareLength(distance);
        return names.isEmpty() ? length : length + " " + names;
    }

    private Span span(double from, double to) {
        return new Span(scale.paper(from), scale.paper(to), units.bareLength(to - from));
    }
}
