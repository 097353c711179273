package org.standwright.viewer.hand.wall;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.area.Zone;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.viewer.hand.change.Differences;
import org.standwright.viewer.hand.change.Handle;
import org.standwright.viewer.hand.change.Move;
import org.standwright.viewer.hand.change.Tape;

/**
 * An obstacle as a whole, or one of its edges.
 *
 * @param text of the file
 * @param pointer of the obstacle in it
 * @param written as the file has it
 */
record ObstacleHandle(String text, String pointer, ObjectNode written, Seen wall, Zone zone, Grip grip, Tape tape)
        implements Handle {
    /** No obstacle in a file may be smaller, mm. */
    private static final double LEAST = 5;

    /** Where it is taken hold of. */
    enum Grip {
        WHOLE(""),
        LEFT("the left edge of "),
        RIGHT("the right edge of "),
        LOWER("the lower edge of "),
        UPPER("the upper edge of ");

        private final String words;

        Grip(String words) {
            this.words = words;
        }
    }

    @Override
    public String key() {
        return grip == Grip.WHOLE ? pointer : pointer + "/" + grip.name();
    }

    @Override
    public String words() {
        return grip.words + zone.name();
    }

    @Override
    public Rect area() {
        return wall.shown(grabbed(zone.itself()));
    }

    /** An edge is a line; here it is a millimetre wide. */
    private Rect grabbed(Rect it) {
        return switch (grip) {
            case WHOLE -> it;
            case LEFT -> new Rect(it.x0() - 0.5, it.y0(), it.x0() + 0.5, it.y1());
            case RIGHT -> new Rect(it.x1() - 0.5, it.y0(), it.x1() + 0.5, it.y1());
            case LOWER -> new Rect(it.x0(), it.y0() - 0.5, it.x1(), it.y0() + 0.5);
            case UPPER -> new Rect(it.x0(), it.y1() - 0.5, it.x1(), it.y1() + 0.5);
        };
    }

    @Override
    public Way way() {
        return switch (grip) {
            case WHOLE -> isOnFloor() ? Way.LEFT_AND_RIGHT : Way.ANYWHERE;
            case LEFT, RIGHT -> Way.LEFT_AND_RIGHT;
            case LOWER, UPPER -> Way.UP_AND_DOWN;
        };
    }

    /** Doors, and what stands on the floor, go along the wall only. */
    private boolean isOnFloor() {
        return zone.kind() == Obstacle.Kind.DOOR
                || zone.kind().isFurniture() && !Grid.less(0, zone.itself().y0());
    }

    @Override
    public Move dragged(double right, double up) {
        double x = way() == Way.UP_AND_DOWN ? 0 : right;
        double y = way() == Way.LEFT_AND_RIGHT ? 0 : up;
        return to(grip == Grip.WHOLE ? whole(x, y) : edge(x, y));
    }

    @Override
    public Move nudged(int right, int up) {
        return dragged(right * tape.step(), up * tape.step());
    }

    private Rect whole(double right, double up) {
        var it = zone.itself();
        var bounds = wall.wall().outline().bounds();
        double x = held(marked(it.x0(), right), bounds.x0(), bounds.x1() - it.width());
        double y = up == 0 ? it.y0() : held(marked(it.y0(), up), bounds.y0(), bounds.y1() - it.height());
        return new Rect(x, y, x + it.width(), y + it.height());
    }

    private Rect edge(double right, double up) {
        var it = zone.itself();
        var bounds = wall.wall().outline().bounds();
        return switch (grip) {
            case LEFT ->
                new Rect(held(marked(it.x0(), right), bounds.x0(), it.x1() - LEAST), it.y0(), it.x1(), it.y1());
            case RIGHT ->
                new Rect(
                        it.x0(),
                        it.y0(),
                        it.x0() + held(marked(it.width(), right), LEAST, bounds.x1() - it.x0()),
                        it.y1());
            case LOWER -> new Rect(it.x0(), held(marked(it.y0(), up), bounds.y0(), it.y1() - LEAST), it.x1(), it.y1());
            default ->
                new Rect(
                        it.x0(),
                        it.y0(),
                        it.x1(),
                        it.y0() + held(marked(it.height(), up), LEAST, bounds.y1() - it.y0()));
        };
    }

    private double marked(double now, double by) {
        return by == 0 ? now : tape.snapped(now + by);
    }

    private static double held(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }

    private Move to(Rect there) {
        return new Move(text(there), sizes(there), wall.shown(grabbed(there)));
    }

    private List<String> sizes(Rect there) {
        var sizes = new ArrayList<String>();
        if (way() != Way.UP_AND_DOWN) {
            sizes.add(tape.words(there.x0()) + " from the left");
        }
        if (way() != Way.LEFT_AND_RIGHT) {
            sizes.add(tape.words(there.y0()) + " up");
        }
        if (grip != Grip.WHOLE) {
            sizes.add(tape.words(there.width()) + " wide, " + tape.words(there.height()) + " high");
        }
        return sizes;
    }

    /** By how much a size changes is added to what is written: a door's height counts from the floor, whatever is seen. */
    private String text(Rect there) {
        var it = zone.itself();
        var now = wall.wall().wall().obstacles().get(zone.at());
        var after = written.deepCopy();
        set(after, "x", now.x(), there.x0() - it.x0());
        set(after, "bottom", now.bottom(), there.y0() - it.y0());
        set(after, "width", now.width().orElse(it.width()), there.width() - it.width());
        set(after, "height", now.height().orElse(it.height()), there.height() - it.height());
        return Differences.written(text, pointer, written, after);
    }

    private void set(ObjectNode after, String field, double now, double by) {
        if (!Grid.same(by, 0)) {
            after.set(field, tape.written(now + by));
        }
    }
}
