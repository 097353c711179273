package org.standwright.design.wall.holder;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Grid;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Part;
import org.standwright.part.Run;

/**
 * A box before the back, open at the top, all its joints glued: sides in rabbets of the back, the front in rabbets of the
 * sides, a thin bottom in a groove of all four. All have their lower edges at one height.
 *
 * @param inner width between the sides, mm
 * @param depth from the back's face to the front's rear face, mm
 * @param rear height of the sides at the back, mm
 * @param front height of the front and of the sides there, mm
 */
record OpenBox(HolderFrame frame, double inner, double depth, double bottom, double rear, double front) {
    static final String GLUED = "hanger on its back, sides in rabbets of the back, front in rabbets of the sides";
    /** Groove above the lower edge, mm. */
    private static final double ABOVE_EDGE = 6;
    /** Play of the bottom in its groove on each edge, mm. */
    private static final double PLAY = 0.5;

    /** From the lower edge to where things stand, mm. */
    static double floor(HolderFrame frame) {
        return ABOVE_EDGE + frame.thin().thickness();
    }

    /** How far below 0 the back must reach so that locking screws miss the bottom, mm. */
    static double below(HolderFrame frame) {
        return floor(frame) + 15 - frame.lock();
    }

    static double width(HolderFrame frame, double inner) {
        return inner + 2 * frame.board();
    }

    double reach() {
        return reach(frame, depth);
    }

    static double reach(HolderFrame frame, double depth) {
        return -frame.face() + depth + frame.board();
    }

    List<Feature> inBack() {
        double width = width(frame, inner);
        return List.of(rabbet(0, frame.board()), rabbet(width - frame.board(), width), groove(Face.SHOW, width));
    }

    List<PlacedPart> boards() {
        double housed = frame.housing();
        double y = frame.face() + housed;
        double length = inner + 2 * housed;
        var parts = new ArrayList<PlacedPart>();
        parts.add(frame.lay().standing("left side", side(Face.BENCH), 0, y, bottom));
        parts.add(frame.lay().standing("right side", side(Face.SHOW), inner + frame.board(), y, bottom));
        parts.add(frame.lay()
                .facing(
                        "front",
                        Part.blank("holder front", frame.sheet(), length, front).with(groove(Face.BENCH, length)),
                        frame.board() - housed,
                        frame.face() - depth,
                        bottom));
        double into = housed - PLAY;
        parts.add(frame.lay()
                .bottom(
                        "bottom",
                        "holder bottom",
                        frame.thin(),
                        new Vec3(frame.board() - into, frame.face() - depth - into, bottom + ABOVE_EDGE),
                        inner + 2 * into,
                        depth + 2 * into));
        return parts;
    }

    /** Frame: x from its rear end, y up; {@code inside} is the face to the box. */
    private Part side(Face inside) {
        double length = frame.housing() + depth + frame.board();
        double height = Math.max(rear, front);
        var part = Part.blank("holder side", frame.sheet(), length, height)
                .with(
                        Channel.across(inside, length - frame.board(), length, height, frame.housing()),
                        groove(inside, length));
        return Grid.less(front, rear) ? part.with(slope(length)) : part;
    }

    private Contour slope(double length) {
        return new Contour(
                new Outline(List.of(
                        new Vec2(0, 0),
                        new Vec2(length, 0),
                        new Vec2(length, front),
                        new Vec2(length - frame.board(), front),
                        new Vec2(frame.housing(), rear),
                        new Vec2(0, rear))),
                "sloped top");
    }

    private Channel rabbet(double x0, double x1) {
        return new Channel(Face.SHOW, Run.ACROSS, new Rect(x0, 0, x1, rear), frame.housing());
    }

    private Channel groove(Face face, double length) {
        double wide = frame.thin().thickness() + frame.design().making().fit();
        return Channel.along(face, ABOVE_EDGE, ABOVE_EDGE + wide, length, frame.housing());
    }
}
