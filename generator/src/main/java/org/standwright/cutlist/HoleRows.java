package org.standwright.cutlist;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.standwright.part.EdgeHole;
import org.standwright.part.Hole;
import org.standwright.unit.Units;

/** Places of equal holes, in words. */
record HoleRows(Units units) {
    /** Holes in a face: in rows along whichever direction has fewer of them. */
    String places(List<Hole> holes) {
        boolean byX = distinct(holes, Hole::x) <= distinct(holes, Hole::y);
        return byX ? rows("x", Hole::x, "y", Hole::y, holes) : rows("y", Hole::y, "x", Hole::x, holes);
    }

    /** Holes in one edge at one height. */
    String alongEdge(List<EdgeHole> holes) {
        var places = holes.stream().map(EdgeHole::along).sorted().map(units::bareLength);
        return (holes.get(0).edge().isEnd() ? "y " : "x ") + places.distinct().collect(Collectors.joining(", "));
    }

    private String rows(
            String row, Function<Hole, Double> across, String place, Function<Hole, Double> along, List<Hole> holes) {
        Map<String, TreeSet<Double>> rows = new LinkedHashMap<>();
        var sorted = new TreeMap<Double, List<Hole>>(holes.stream().collect(Collectors.groupingBy(across)));
        sorted.forEach((at, inRow) -> rows.computeIfAbsent(units.bareLength(at), key -> new TreeSet<>())
                .addAll(inRow.stream().map(along).toList()));
        return rows.entrySet().stream()
                .map(entry -> row + " " + entry.getKey() + " at " + place + " "
                        + entry.getValue().stream()
                                .map(units::bareLength)
                                .distinct()
                                .collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
    }

    private long distinct(List<Hole> holes, Function<Hole, Double> of) {
        return holes.stream().map(of).map(units::bareLength).distinct().count();
    }
}
