package org.standwright.design.wall.holder;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.wall.Holder;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Part;

/**
 * A carcass of two equal sides in rabbets of the back, top and bottom in rabbets of the sides, and dados in the sides in
 * which the bottoms of the drawers run. It is as high as its things ask and at least as high as its back must be; its drawers
 * share that height evenly.
 */
final class CabinetBody {
    /** How much of its depth an open drawer stands out when a hand leans on it; common practice, no source. */
    private static final double DRAWN = 2.0 / 3;

    private final HolderFrame frame;
    private final Holder.Cabinet cabinet;
    private final DrawerSize size;

    CabinetBody(HolderFrame frame, Holder.Cabinet cabinet) {
        this.frame = frame;
        this.cabinet = cabinet;
        this.size = new DrawerSize(frame, cabinet);
    }

    Body body() {
        size.check();
        double board = frame.board();
        double depth = size.depth() + DrawerSize.BEHIND;
        double least = Math.max(2 * board + size.leastRoom() - frame.top(), board + 15 - frame.lock());
        double reach = -frame.face() + depth;
        double bottom = frame.bottom(reach, least);
        double height = frame.top() - bottom;
        double cell = size.cell(height - 2 * board);
        var boards = new ArrayList<PlacedPart>(carcass(depth, bottom, height, cell));
        for (int i = 0; i < cabinet.drawers(); i++) {
            double z = bottom + board + DrawerSize.LOWEST + i * cell;
            boards.addAll(new DrawerBoards(frame, size, size.wall(cell), i + 1, -reach, z).boards());
        }
        return new Body(
                cabinet.width(),
                bottom,
                List.of(rabbet(0, height), rabbet(cabinet.width() - board, height)),
                boards,
                List.of(screws()),
                new Box3(new Vec3(0, -reach, bottom), new Vec3(cabinet.width(), frame.face(), frame.top())),
                new Vec3(cabinet.width() / 2, -reach + size.depth() / 2, bottom + height / 2),
                reach + DRAWN * size.depth(),
                "hanger on its back, carcass in rabbets, drawers in rabbets and on their bottoms");
    }

    private Hardware screws() {
        return new Hardware(
                frame.screwing().item(size.screw()),
                cabinet.drawers() * DrawerBoards.SCREWS,
                cabinet.name() + ", drawer bottoms, from below into the sides' edges (not rated)");
    }

    private Channel rabbet(double x, double height) {
        return Channel.across(Face.SHOW, x, x + frame.board(), height, frame.housing());
    }

    private List<PlacedPart> carcass(double depth, double bottom, double height, double cell) {
        double board = frame.board();
        double housed = frame.housing();
        double front = frame.face() - depth;
        var side = side(depth, height, cell);
        var end = Part.blank("cabinet end", frame.sheet(), cabinet.width() - 2 * board + 2 * housed, depth);
        var lay = frame.lay();
        return List.of(
                lay.placed("left side", side, Axis.Z_PLUS, Axis.Y_MINUS, new Vec3(0, frame.face() + housed, bottom)),
                lay.placed("right side", side, Axis.Z_PLUS, Axis.Y_PLUS, new Vec3(cabinet.width(), front, bottom)),
                lay.lying("bottom", end, board - housed, front, bottom),
                lay.lying("top", end, board - housed, front, frame.top() - board));
    }

    /** Its grain upright; all its dados run right through, so that it serves left and right. */
    private Part side(double depth, double height, double cell) {
        double wide = depth + frame.housing();
        var cuts = new ArrayList<Feature>();
        cuts.add(Channel.across(Face.SHOW, 0, frame.board(), wide, frame.housing()));
        for (int i = 0; i < cabinet.drawers(); i++) {
            double x = frame.board() + DrawerSize.LOWEST + i * cell;
            cuts.add(Channel.across(Face.SHOW, x, x + size.bottom() + DrawerSize.HEIGHT_PLAY, wide, frame.housing()));
        }
        cuts.add(Channel.across(Face.SHOW, height - frame.board(), height, wide, frame.housing()));
        return Part.blank("cabinet side", frame.sheet(), height, wide).with(cuts);
    }
}
