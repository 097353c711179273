package org.standwright.cutlist;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Grid;
import org.standwright.geom.Outline;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
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
    /** What a bore may differ from its printed size, mm. */
    private static final double WORTH_SAYING = 0.1;

    private final String label;
    private final Sides sides;
    private final Part part;
    private final Units units;
    private final HoleRows rows;

    MachiningNotes(PlacedPart placed, Units units) {
        label = placed.label();
        sides = new Sides(placed.placement());
        part = placed.part();
        this.units = units;
        rows = new HoleRows(units);
    }

    List<String> lines() {
        var lines = new ArrayList<String>();
        lines.add("as " + label + ": " + sides.reference());
        lines.addAll(BandNotes.of(part.bands(), sides));
        var holes = new LinkedHashMap<String, List<Hole>>();
        var edgeHoles = new LinkedHashMap<String, List<EdgeHole>>();
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
                    lines.add(note(pocket));
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
                    lines.add(contour.purpose() + ": cut to the outline " + corners(contour.outline()));
                    return null;
                }
            });
        }
        holes.forEach((head, row) -> lines.add(row.size() + " " + head + ": " + rows.places(row)));
        edgeHoles.forEach((head, row) -> lines.add(row.size() + " " + head + ": " + rows.alongEdge(row)));
        if (part.oversize() > 0) {
            lines.add("cut " + units.length(part.oversize()) + " over on every edge, trimmed after assembly" + trim());
        }
        return lines;
    }

    /** A layer of the worktop is bored where it lies; a front or a door has to be bored before it is hung. */
    private String trim() {
        if (part.features().isEmpty()) {
            return "";
        }
        return (part.name().startsWith("worktop") ? "; bore it after the trim" : "")
                + "; places count from the trimmed edges";
    }

    private String note(Channel channel) {
        boolean rabbet = channel.isRabbet(part.length(), part.width());
        var kind = rabbet ? "rabbet" : channel.run() == Run.ALONG ? "groove" : "dado";
        var stopped = channel.isStopped(part.length(), part.width()) ? "stopped " : "";
        var area = channel.area();
        boolean along = channel.run() == Run.ALONG;
        var xs = "x " + span(area.x0(), area.x1());
        var ys = "y " + span(area.y0(), area.y1());
        var ends = stopped.isEmpty() ? "" : ", " + (along ? xs : ys) + ", cut square where it stops";
        return stopped + kind + " " + units.length(channel.width()) + " wide, " + units.length(channel.depth())
                + " deep, " + face(channel.face()) + ", " + (along ? ys : xs) + ends;
    }

    private String head(Hole hole) {
        return "\u00d7 " + hole.purpose() + ", \u00d8 " + bore(hole.diameter()) + ", "
                + depth(hole.depth(), hole.face())
                + hole.recess().map(recess -> ", " + note(recess, hole)).orElse("");
    }

    private String note(Recess recess, Hole hole) {
        var wide = "\u00d8 " + bore(recess.diameter());
        var from = hole.depth().isEmpty() ? " from the " + face(hole.face()) : "";
        return recess instanceof Recess.Countersink cone
                ? "countersunk to " + wide + " at " + degrees(cone.angle()) + from
                : "counterbored " + wide + ", " + units.length(recess.depth(hole.diameter())) + " deep" + from;
    }

    private String note(Bevel bevel) {
        var through = Grid.same(bevel.depth(), part.thickness())
                ? "over its whole thickness"
                : units.length(bevel.depth()) + " deep";
        return "bevel along the " + sides.edge(bevel.edge()) + ", blade tilted " + degrees(bevel.tilt())
                + " from square, " + units.length(bevel.setback()) + " off the " + face(bevel.face()) + ", "
                + through;
    }

    private static String degrees(double angle) {
        return BigDecimal.valueOf(angle).stripTrailingZeros().toPlainString() + "\u00b0";
    }

    private String corners(Outline outline) {
        return outline.corners().stream()
                .map(corner -> "(" + units.bareLength(corner.x()) + ", " + units.bareLength(corner.y()) + ")")
                .collect(Collectors.joining(" "));
    }

    /** A bore that the tape's marks miss is said in millimetres too: drills come in both. */
    private String bore(double diameter) {
        boolean missed = Math.abs(units.shown(diameter) - diameter) > WORTH_SAYING;
        return units.length(diameter) + (missed ? " (" + Units.MM.length(diameter) + ")" : "");
    }

    private String note(Pocket pocket) {
        var area = pocket.area();
        var corners = pocket.radius() == 0 ? "square corners" : "corners r " + units.length(pocket.radius());
        var outline = pocket.outline().isRectangle() ? "" : ", outline " + corners(pocket.outline());
        return pocket.purpose() + ": " + (pocket.depth().isEmpty() ? "cutout " : "pocket ")
                + units.bareLength(area.width()) + " \u00d7 " + units.length(area.height()) + ", " + corners + ", "
                + depth(pocket.depth(), pocket.face()) + ", x " + span(area.x0(), area.x1()) + ", y "
                + span(area.y0(), area.y1()) + outline;
    }

    private String depth(OptionalDouble depth, Face face) {
        return depth.isEmpty() ? "through" : units.length(depth.getAsDouble()) + " deep, " + face(face);
    }

    private String span(double from, double to) {
        return units.bareLength(from) + " to " + units.bareLength(to);
    }

    private String edgeHead(EdgeHole hole) {
        return "\u00d7 " + hole.purpose() + ", \u00d8 " + bore(hole.diameter()) + ", "
                + (isThrough(hole) ? "through" : units.length(hole.depth()) + " deep") + ", into the "
                + sides.edge(hole.edge()) + ", "
                + units.length(hole.z())
                + " above the bench face";
    }

    private boolean isThrough(EdgeHole hole) {
        return Grid.same(hole.depth(), hole.edge().isEnd() ? part.length() : part.width());
    }

    private static String face(Face face) {
        return face == Face.BENCH ? "bench face" : "show face";
    }
}
