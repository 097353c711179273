package org.standwright.cutlist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec2;
import org.standwright.part.Edge;
import org.standwright.part.Part;
import org.standwright.part.Pocket;

/**
 * A pocket in words. One that goes through and is open at one edge or at a corner is a notch; one that takes part of the
 * thickness over a whole end is a lap.
 */
record PocketNote(Pocket pocket, Part part, Sides sides, SizeWords words) {
    /** What a lap may miss half the thickness by and still be a half-lap, mm: boards are never quite alike. */
    private static final double HALF = 0.1;

    /**
     * Each line by the first pocket that it tells of; those that differ in x alone share one: '8 × open slot: notch …, x 10
     * to 20, 40 to 50, y …'.
     */
    static Map<PocketNote, String> lines(List<PocketNote> notes) {
        var alike = new LinkedHashMap<String, List<PocketNote>>();
        notes.forEach(note -> alike.computeIfAbsent(note.line("", ""), first -> new ArrayList<>())
                .add(note));
        return alike.values().stream().collect(Collectors.toMap(group -> group.get(0), PocketNote::line));
    }

    private static String line(List<PocketNote> alike) {
        var xs = alike.stream().map(PocketNote::xs).collect(Collectors.joining(", "));
        return alike.get(0).line(alike.size() > 1 ? alike.size() + " \u00d7 " : "", "x " + xs);
    }

    private String xs() {
        return words.span(pocket.area().x0(), pocket.area().x1());
    }

    /** 'motor plate: pocket 260 × 180 mm, corners r 10 mm, 9 mm deep, show face, x 100 to 360, y 20 to 200'. */
    private String line(String count, String xs) {
        var area = pocket.area();
        return count + pocket.purpose() + ": " + what() + corners() + ", "
                + words.depth(pocket.depth(), pocket.face()) + ", " + xs + ", y "
                + words.span(area.y0(), area.y1())
                + (pocket.outline().isRectangle() ? "" : ", " + words.corners(pocket.outline()));
    }

    private String what() {
        var open = open();
        var size = words.area(pocket.area().width(), pocket.area().height());
        boolean through = pocket.depth().isEmpty();
        if (open.isEmpty()) {
            return (through ? "cutout " : "pocket ") + size;
        }
        if (through && open.size() == 1) {
            return "notch " + size + " in the " + sides.edge(open.get(0));
        }
        if (through && open.size() == 2 && open.get(0).isEnd() != open.get(1).isEnd()) {
            return "notch " + size + " in the corner of the " + sides.edge(open.get(0)) + " and the "
                    + sides.edge(open.get(1));
        }
        if (!through && isOverOneEnd(open)) {
            return (isHalf() ? "half-lap " : "lap ") + size + " across the " + sides.edge(open.get(0));
        }
        return (through ? "cutout " : "pocket ") + size + " open at "
                + open.stream().map(edge -> "the " + sides.edge(edge)).collect(Collectors.joining(" and "));
    }

    /** Edges of the blank that a side of it lies on, ends first. */
    private List<Edge> open() {
        return Arrays.stream(Edge.values())
                .filter(edge -> IntStream.range(0, pocket.outline().corners().size())
                        .anyMatch(i -> isOn(edge, pocket.outline().corner(i))
                                && isOn(edge, pocket.outline().corner(i + 1))))
                .toList();
    }

    private boolean isOn(Edge edge, Vec2 at) {
        return switch (edge) {
            case X0 -> Grid.same(at.x(), 0);
            case X1 -> Grid.same(at.x(), part.length());
            case Y0 -> Grid.same(at.y(), 0);
            case Y1 -> Grid.same(at.y(), part.width());
        };
    }

    private boolean isOverOneEnd(List<Edge> open) {
        return pocket.outline().isRectangle() && open.size() == 3 && open.contains(Edge.Y0) && open.contains(Edge.Y1);
    }

    private boolean isHalf() {
        return Math.abs(pocket.depthIn(part.thickness()) - part.thickness() / 2) <= HALF;
    }

    /** Those at an open edge stay as they are; nothing where there are no others. */
    private String corners() {
        var open = open();
        long inner = pocket.outline().corners().stream()
                .filter(corner -> open.stream().noneMatch(edge -> isOn(edge, corner)))
                .count();
        if (inner == 0) {
            return "";
        }
        var which = (open.isEmpty() ? "" : "inner ") + (inner == 1 ? "corner" : "corners");
        return pocket.radius() == 0
                ? ", square " + which
                : ", " + which + " r " + words.length(pocket.radius())
                        + (hasSharp(open) ? ", sharp where one points in" : "");
    }

    private boolean hasSharp(List<Edge> open) {
        var outline = pocket.outline();
        return IntStream.range(0, outline.corners().size())
                .filter(i -> open.stream().noneMatch(edge -> isOn(edge, outline.corner(i))))
                .anyMatch(i -> pocket.rounding(i) == 0);
    }
}
