package org.standwright.drawing.holder;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.drawing.figure.Sight;
import org.standwright.geom.Vec3;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;

/**
 * What is bored into a holder or cut through it.
 *
 * @param what goes in or comes through, in the plural
 * @param at its middle where the tool enters; of a slot, the middle of its rear end
 * @param diameter of the bore, mm
 * @param depth of the bore from there, mm
 */
record Bored(String what, Vec3 at, double diameter, double depth, Look look) {
    enum Look {
        /** Bored from the room, for a screw whose head is sunk in. */
        SCREW,
        /** Bored from the room, for something that is seen. */
        BORE,
        /** Right through a board that lies flat, for things. */
        CUTOUT
    }

    static List<Bored> of(EqualHolders holder) {
        var all = new ArrayList<Bored>();
        holder.boards().forEach(board -> all.addAll(in(board)));
        return List.copyOf(all);
    }

    private static List<Bored> in(PlacedPart board) {
        boolean facing = Sight.FRONT.isAlong(board.placement().through());
        boolean lying = Sight.TOP.isAlong(board.placement().through());
        var all = new ArrayList<Bored>();
        for (var feature : board.part().features()) {
            if (feature instanceof Hole hole && facing && hole.face() == Face.SHOW) {
                var look = hole.recess().isPresent() ? Look.SCREW : Look.BORE;
                all.add(new Bored(
                        words(hole.purpose()),
                        place(board, hole.x(), hole.y()),
                        hole.diameter(),
                        hole.depthIn(board.part().thickness()),
                        look));
            } else if (feature instanceof Hole hole
                    && lying
                    && hole.depth().isEmpty()
                    && hole.recess().isEmpty()) {
                all.add(new Bored(
                        "bores",
                        place(board, hole.x(), hole.y()),
                        hole.diameter(),
                        board.part().thickness(),
                        Look.CUTOUT));
            } else if (feature instanceof Pocket pocket
                    && lying
                    && pocket.depth().isEmpty()) {
                var area = pocket.area();
                var end = place(board, (area.x0() + area.x1()) / 2, area.y1());
                all.add(new Bored("slots", end, area.width(), board.part().thickness(), Look.CUTOUT));
            }
        }
        return all;
    }

    private static Vec3 place(PlacedPart board, double x, double y) {
        return board.placement().apply(new Vec3(x, y, board.part().thickness()));
    }

    private static String words(String purpose) {
        return switch (purpose) {
            case "hanger screw" -> "hanger screws";
            case "lip screw" -> "lip screws";
            case "pilot for a hook" -> "hooks";
            case "bore for a dowel" -> "pegs";
            case "finger hole" -> "finger holes";
            default -> purpose.contains("into the strip") ? "locking screws" : purpose;
        };
    }
}
