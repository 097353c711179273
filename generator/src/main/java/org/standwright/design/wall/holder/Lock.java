package org.standwright.design.wall.holder;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Removed;

/** Two screws through the back into the strip that it hangs on, so that a knock from below does not lift it off. */
record Lock(HolderFrame frame) {
    static final String PURPOSE = "screw into the strip against being lifted";
    /** Wood between the head and whatever else is cut into the back, mm; common practice, no source. */
    private static final double CLEAR = 3;

    private static final double STEP = 5;
    /** Hole that lets a screwdriver through, mm; common practice, no source. */
    private static final double DRIVER = 12;

    /** A quarter of the width from each end, or a little nearer to the middle. */
    List<Hole> holes(Part back, double bottom) {
        double y = frame.lock() - bottom;
        for (double x = back.length() / 4; Grid.less(x, back.length() / 2 - 2 * CLEAR); x += STEP) {
            var pair = List.of(hole(x, y), hole(back.length() - x, y));
            if (pair.stream().allMatch(hole -> isClear(hole, back))) {
                return pair;
            }
        }
        throw frame.refused(
                "/lock",
                "has no wood left in its back, " + frame.length(-frame.lock())
                        + " below the high edge of its strip, for a screw against being lifted.",
                "Use a wider cleat or leave the lock off.");
    }

    private Hole hole(double x, double y) {
        return frame.screwing().sunk(Face.SHOW, x, y, PURPOSE);
    }

    private boolean isClear(Hole hole, Part back) {
        var area = hole.area();
        var room = new Box3(
                new Vec3(area.x0() - CLEAR, area.y0() - CLEAR, 0),
                new Vec3(area.x1() + CLEAR, area.y1() + CLEAR, back.thickness()));
        var removed = new ArrayList<Box3>();
        back.features().forEach(feature -> removed.add(feature.accept(new Removed(back))));
        return removed.stream().noneMatch(box -> box.overlap(room) > Grid.STEP);
    }

    /** Boards with a hole for the screwdriver where they stand before the lock's screws; drawers are taken out. */
    List<PlacedPart> reached(List<PlacedPart> boards, List<Hole> locks, double bottom) {
        return boards.stream().map(board -> reached(board, locks, bottom)).toList();
    }

    private PlacedPart reached(PlacedPart board, List<Hole> locks, double bottom) {
        var through = board.placement().through();
        boolean faces = through == Axis.Y_PLUS || through == Axis.Y_MINUS;
        if (!faces
                || !Grid.less(board.box().max().y(), frame.face())
                || board.part().name().startsWith("drawer")) {
            return board;
        }
        var holes = locks.stream()
                .map(lock -> board.placement().local(new Vec3(lock.x(), 0, lock.y() + bottom)))
                .filter(at -> isWithin(at.x(), board.part().length())
                        && isWithin(at.y(), board.part().width()))
                .map(at -> Hole.through(at.x(), at.y(), DRIVER, "reach for the lock screw"))
                .toList();
        return new PlacedPart(board.label(), board.part().with(holes), board.placement());
    }

    private static boolean isWithin(double place, double side) {
        return Grid.less(DRIVER / 2 + CLEAR, place) && Grid.less(place, side - DRIVER / 2 - CLEAR);
    }

    Hardware hardware() {
        double length = frame.screwing().through(frame.board(), frame.cleat(), "A back locked to its strip");
        return new Hardware(
                frame.screwing().item(length),
                2,
                frame.holder().name() + ", through the back into the strip once it hangs, against being lifted");
    }
}
