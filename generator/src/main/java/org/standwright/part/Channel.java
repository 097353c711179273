package org.standwright.part;

import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.geom.Require;

/**
 * A straight channel of rectangular section cut into one face: a dado (across the grain), a groove (along it) or, when
 * a long side lies on the blank's edge, a rabbet. It may end inside the blank (stopped) or at its edges (through).
 *
 * @param face that the tool enters by
 * @param area on the face, in part coordinates, within the blank
 * @param depth from the face, mm, less than the thickness
 */
public record Channel(Face face, Run run, Rect area, double depth) implements Feature {
    public Channel {
        Require.positive("depth", depth, "channel");
    }

    /** Across the grain, over the whole width, from {@code x0} to {@code x1}. */
    public static Channel across(Face face, double x0, double x1, double partWidth, double depth) {
        return new Channel(face, Run.ACROSS, new Rect(x0, 0, x1, partWidth), depth);
    }

    /** Along the grain, over the whole length, from {@code y0} to {@code y1}. */
    public static Channel along(Face face, double y0, double y1, double partLength, double depth) {
        return new Channel(face, Run.ALONG, new Rect(0, y0, partLength, y1), depth);
    }

    /** Size across the run, mm. */
    public double width() {
        return run == Run.ALONG ? area.height() : area.width();
    }

    /** Whether a long side lies on an edge of a blank of this size. */
    public boolean isRabbet(double partLength, double partWidth) {
        return run == Run.ALONG
                ? Grid.same(area.y0(), 0) || Grid.same(area.y1(), partWidth)
                : Grid.same(area.x0(), 0) || Grid.same(area.x1(), partLength);
    }

    /** Whether it ends inside a blank of this size at one end or both. */
    public boolean isStopped(double partLength, double partWidth) {
        return run == Run.ALONG
                ? !(Grid.same(area.x0(), 0) && Grid.same(area.x1(), partLength))
                : !(Grid.same(area.y0(), 0) && Grid.same(area.y1(), partWidth));
    }

    @Override
    public String purpose() {
        return "channel";
    }

    @Override
    public <R> R accept(FeatureVisitor<R> visitor) {
        return visitor.channel(this);
    }
}
