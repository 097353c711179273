package org.standwright.router.machining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standwright.cutlist.TrimmedParts;
import org.standwright.part.Edge;
import org.standwright.part.Part;

/** What to mind where a part leaves the sheet larger or smaller than it is built in. */
final class Trim {
    private Trim() {}

    /** Whether a part is trimmed before its features are cut. */
    static boolean comesFirst(Part part) {
        return part.oversize() > 0 && TrimmedParts.boredAfter(part);
    }

    static List<String> remarks(Part part) {
        var lines = new ArrayList<String>();
        if (part.oversize() > 0) {
            lines.add("cut " + Mm.of(part.oversize()) + " mm over on every edge and trimmed later"
                    + (part.features().isEmpty()
                            ? ""
                            : comesFirst(part)
                                    ? "; what is in it is made after the trim, from the part's own drawing: it is not drawn on the board"
                                    : "; what is in it is placed from the trimmed edges"
                                            + (part.contour().isPresent()
                                                    ? ", but its contour is cut after the trim, from its own drawing"
                                                    : "")));
        }
        Map<String, List<String>> covered = new LinkedHashMap<>();
        for (var edge : Edge.values()) {
            part.bands()
                    .on(edge)
                    .ifPresent(band -> covered.computeIfAbsent(
                                    Mm.of(band.thickness()) + " mm smaller, where '" + band.name() + "' comes on, at ",
                                    key -> new ArrayList<>())
                            .add(place(edge)));
        }
        covered.forEach((words, edges) -> lines.add("cut " + words + String.join(", ", edges)));
        return lines;
    }

    private static String place(Edge edge) {
        return switch (edge) {
            case X0 -> "x = 0";
            case X1 -> "the far end along x";
            case Y0 -> "y = 0";
            case Y1 -> "the far edge along y";
        };
    }
}
