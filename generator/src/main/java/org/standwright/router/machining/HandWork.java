package org.standwright.router.machining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.standwright.geom.Grid;
import org.standwright.part.Bevel;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Part;
import org.standwright.unit.Units;

/** What a bit that comes from above cannot cut, in words. */
public final class HandWork {
    private HandWork() {}

    public static List<String> of(Part part) {
        return of(part, new Sizes(Units.MM));
    }

    static List<String> of(Part part, Sizes sizes) {
        Map<String, List<Double>> holes = new LinkedHashMap<>();
        var lines = new ArrayList<String>();
        for (var feature : part.features()) {
            if (feature instanceof EdgeHole hole) {
                holes.computeIfAbsent(words(hole, part, sizes), key -> new ArrayList<>())
                        .add(hole.along());
            } else if (feature instanceof Bevel bevel) {
                lines.add(words(bevel, part, sizes));
            }
        }
        holes.forEach((words, along) -> lines.add(
                0,
                along.size() + " x " + words + " " + places(along) + ": drill them with the part's template or a jig"));
        return lines;
    }

    static String face(Face face) {
        return face == Face.BENCH ? "bench face" : "show face";
    }

    private static String words(EdgeHole hole, Part part, Sizes sizes) {
        boolean through = Grid.same(hole.depth(), hole.edge().isEnd() ? part.length() : part.width());
        return hole.purpose() + ", " + sizes.bore(hole.diameter()) + " wide, "
                + (through ? "through" : sizes.of(hole.depth()) + " deep") + ", into the " + edge(hole.edge()) + ", "
                + sizes.of(hole.z()) + " above the bench face, at "
                + (hole.edge().isEnd() ? "y" : "x");
    }

    /** One that leaves little of the edge flat is a bevel whose tip is taken off. */
    private static String words(Bevel bevel, Part part, Sizes sizes) {
        double tip = bevel.blunted(part.thickness()).orElse(0);
        boolean isBevel = tip > 0 || Grid.same(bevel.depth(), part.thickness());
        return (isBevel ? "bevel" : "chamfer") + " along the " + edge(bevel.edge()) + ", blade tilted "
                + Mm.of(bevel.tilt()) + " degrees from square, " + sizes.of(bevel.setback()) + " off the "
                + face(bevel.face()) + ", "
                + (isBevel
                        ? Mm.of(part.thickness() - bevel.depth()) + " mm of the edge left flat"
                        : Mm.of(bevel.depth()) + " mm off the edge")
                + ": saw it after routing";
    }

    private static String places(List<Double> along) {
        return along.stream().sorted().map(Mm::of).distinct().collect(Collectors.joining(", "));
    }

    private static String edge(Edge edge) {
        return switch (edge) {
            case X0 -> "end at x = 0";
            case X1 -> "far end along x";
            case Y0 -> "edge at y = 0";
            case Y1 -> "far edge along y";
        };
    }
}
