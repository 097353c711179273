package org.standwright.cutlist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Grid;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;
import org.standwright.part.Run;
import org.standwright.unit.Units;

/**
 * What is machined into a part, in words. Places are x along the grain from the reference end and y across it from the
 * reference edge, as in the part's frame.
 */
final class MachiningNotes {
    private final String label;
    private final Sides sides;
    private final Part part;
    private final SizeWords words;
    private final HoleRows rows;

    MachiningNotes(PlacedPart placed, Units units) {
        label = placed.label();
        sides = new Sides(placed.placement());
        part = placed.part();
        words = new SizeWords(units);
        rows = new HoleRows(units);
    }

    List<String> lines() {
        var lines = new ArrayList<String>();
        lines.add("as " + label + ": " + sides.reference());
        lines.addAll(BandNotes.of(part.bands(), sides));
        var holes = new LinkedHashMap<String, List<Hole>>();
        var edgeHoles = new LinkedHashMap<String, List<EdgeHole>>();
        var pockets = PocketNote.lines(part.features().stream()
                .filter(Pocket.class::isInstance)
                .map(pocket -> note((Pocket) pocket))
                .toList());
        for (var feature : part.features()) {
            feature.accept(new FeatureVisitor<Void>() {
                @Override
                public Void channel(Channel channel) {
                    lines.add(note(channel));
                    return null;
                }

                @Override
                public Void hole(Hole hole) {
                    holes.computeIfAbsent(head(hole), head -> new ArrayList<>()).add(hole);
                    return null;
                }

                @Override
                public Void pocket(Pocket pocket) {
                    Optional.ofNullable(pockets.get(note(pocket))).ifPresent(lines::add);
                    return null;
                }

                @Override
                public Void edgeHole(EdgeHole hole) {
                    edgeHoles
                            .computeIfAbsent(edgeHead(hole), head -> new ArrayList<>())
                            .add(hole);
                    return null;
                }

                @Override
                public Void bevel(Bevel bevel) {
                    lines.add(note(bevel));
                    return null;
                }

                @Override
                public Void contour(Contour contour) {
                    lines.add(note(contour));
                    return null;
                }
            });
        }
        holes.forEach((head, row) -> lines.add(row.size() + " " + head + ": " + rows.places(row)));
        edgeHoles.forEach((head, row) -> lines.add(row.size() + " " + head + ": " + rows.alongEdge(row)));
        if (part.oversize() > 0) {
            lines.add("cut " + words.length(part.oversize()) + " over on every edge, trimmed after assembly" + trim());
        }
        return lines;
    }

    private String trim() {
        if (part.features().isEmpty()) {
            return "";
        }
        return (TrimmedParts.boredAfter(part) ? "; bore it after the trim" : "")
                + "; places count from the trimmed edges";
    }

    private PocketNote note(Pocket pocket) {
        return new PocketNote(pocket, part, sides, words);
    }

    private String note(Channel channel) {
        boolean rabbet = channel.isRabbet(part.length(), part.width());
        var kind = rabbet ? "rabbet" : channel.run() == Run.ALONG ? "groove" : "dado";
        var stopped = channel.isStopped(part.length(), part.width()) ? "stopped " : "";
        var area = channel.area();
        boolean along = channel.run() == Run.ALONG;
        var xs = "x " + words.span(area.x0(), area.x1());
        var ys = "y " + words.span(area.y0(), area.y1());
        var ends = stopped.isEmpty() ? "" : ", " + (along ? xs : ys) + ", cut square where it stops";
        return stopped + kind + " " + words.length(channel.width()) + " wide, " + words.length(channel.depth())
                + " deep, " + SizeWords.face(channel.face()) + ", " + (along ? ys : xs) + ends;
    }

    private String head(Hole hole) {
        return "\u00d7 " + hole.purpose() + ", " + words.bore(hole.diameter()) + ", "
                + words.depth(hole.depth(), hole.face())
                + hole.recess().map(recess -> ", " + note(recess, hole)).orElse("");
    }

    private String note(Recess recess, Hole hole) {
        var wide = words.bore(recess.diameter());
        var from = hole.depth().isEmpty() ? " from the " + SizeWords.face(hole.face()) : "";
        return recess instanceof Recess.Countersink cone
                ? "countersunk to " + wide + " at " + SizeWords.degrees(cone.angle()) + from
                : "counterbored " + wide + ", " + words.length(recess.depth(hole.diameter())) + " deep" + from;
    }

    /**
     * Over the whole thickness the edge becomes a bevel and the other face keeps its size; where little is left of the
     * edge it is a bevel whose tip is taken off; else it is a chamfer.
     */
    private String note(Bevel bevel) {
        double tip = bevel.blunted(part.thickness()).orElse(0);
        boolean whole = Grid.same(bevel.depth(), part.thickness());
        var head = (whole || tip > 0 ? "bevel" : "chamfer")
                + (bevel.edge().isEnd() ? " across the " : " along the ") + sides.edge(bevel.edge())
                + ", blade tilted " + SizeWords.degrees(bevel.tilt()) + " from square: ";
        if (tip > 0) {
            return head + words.length(bevel.setback()) + " off the " + SizeWords.face(bevel.face()) + ", "
                    + words.length(part.thickness() - bevel.depth()) + " of the edge left flat";
        }
        return head + words.length(bevel.setback()) + " off the " + SizeWords.face(bevel.face()) + ", "
                + (whole
                        ? "nothing off the " + SizeWords.face(bevel.face().opposite())
                        : words.length(bevel.depth()) + " off the edge");
    }

    private String note(Contour contour) {
        return contour.purpose() + ": cut to an outline with straight sides, " + words.corners(contour.outline());
    }

    private String edgeHead(EdgeHole hole) {
        return "\u00d7 " + hole.purpose() + ", " + words.bore(hole.diameter()) + ", "
                + (isThrough(hole) ? "through" : words.length(hole.depth()) + " deep") + ", into the "
                + sides.edge(hole.edge()) + ", "
                + words.length(hole.z())
                + " above the bench face";
    }

    private boolean isThrough(EdgeHole hole) {
        return Grid.same(hole.depth(), hole.edge().isEnd() ? part.length() : part.width());
    }
}
