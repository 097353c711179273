package org.standwright.design.wall.holder;

import java.util.List;
import java.util.stream.IntStream;
import org.standwright.assembly.Hardware;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Feature;

/**
 * Things that hang in a row before a plain back, from pegs or hooks halfway between the hanger's screws and those of a lock.
 *
 * @param pitch from one thing to the next, mm
 * @param lead from the back's end to the nearest thing's side, mm
 */
record HangingRow(HolderFrame frame, double pitch, double lead) {
    double width() {
        int count = frame.holder().things().count();
        return Math.max(
                frame.leastWidth(),
                (count - 1) * pitch + frame.holder().things().width() + 2 * lead);
    }

    /** Middles of the things, from the left end, mm. */
    List<Double> centres() {
        int count = frame.holder().things().count();
        double first = (width() - (count - 1) * pitch) / 2;
        return IntStream.range(0, count).mapToObj(i -> first + i * pitch).toList();
    }

    /** Height of the pegs or hooks. */
    double level() {
        return (screws() + lock()) / 2;
    }

    /** From there to the hanger's screws, and as far to those of a lock, mm. */
    double room() {
        return screws() - level();
    }

    private double screws() {
        return frame.section().blunt() + frame.section().shortFace() / 2;
    }

    private double lock() {
        return frame.lock();
    }

    /**
     * @param top height of the things' upper ends
     * @param out how far before the wall their middle is, mm
     * @param reach how far before the wall the pegs or hooks end, mm
     */
    Body body(List<Feature> inBack, List<Hardware> hardware, double bottom, double top, double out, double reach) {
        var things = frame.holder().things();
        double front = Math.max(reach, out + things.depth() / 2);
        return new Body(
                width(),
                bottom,
                inBack,
                List.of(),
                hardware,
                new Box3(
                        new Vec3(0, -front, top - things.height()),
                        new Vec3(width(), frame.face(), top + HolderFrame.ABOVE)),
                new Vec3(width() / 2, -out, top - things.height() / 2),
                reach,
                "hanger on its back");
    }
}
