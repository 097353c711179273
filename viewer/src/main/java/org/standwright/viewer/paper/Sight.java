package org.standwright.viewer.paper;

import org.standwright.drawing.Drawing;
import org.standwright.drawing.Point;

/**
 * Which pixel shows which point of a paper.
 *
 * @param scale pixels a millimetre
 * @param left where the paper's left edge is seen, pixels from the left
 * @param bottom where its lower edge is seen, pixels from the top
 */
public record Sight(double scale, double left, double bottom) {
    /** White around a paper that is seen whole, pixels. */
    private static final double MARGIN = 12;

    private static final double SMALLEST = 0.05;
    private static final double LARGEST = 60;
    /** As much of the paper stays in sight when it is moved, pixels. */
    private static final double HELD = 48;

    /** The whole of a paper in the middle of a view of this many pixels. */
    public static Sight whole(Drawing paper, double width, double height) {
        return centred(
                Math.min((width - 2 * MARGIN) / paper.width(), (height - 2 * MARGIN) / paper.height()),
                paper,
                width,
                height);
    }

    private static Sight centred(double scale, Drawing paper, double width, double height) {
        double possible = clamped(scale, SMALLEST, LARGEST);
        return new Sight(possible, (width - possible * paper.width()) / 2, (height + possible * paper.height()) / 2);
    }

    /** Nearer, or farther for a factor below 1; what is seen at a pixel stays there. */
    public Sight zoomed(double factor, double x, double y) {
        double possible = clamped(scale * factor, SMALLEST, LARGEST);
        double by = possible / scale;
        return new Sight(possible, x + (left - x) * by, y + (bottom - y) * by);
    }

    /** The paper pushed by so many pixels. */
    public Sight moved(double right, double down) {
        return new Sight(scale, left + right, bottom + down);
    }

    /** The same, with some of the paper left in a view of this many pixels. */
    public Sight held(Drawing paper, double width, double height) {
        double wide = scale * paper.width();
        double high = scale * paper.height();
        double within = Math.min(HELD, Math.min(width, height) / 2);
        return new Sight(
                scale, clamped(left, within - wide, width - within), clamped(bottom, within, height - within + high));
    }

    /** The point of the paper that a pixel shows, mm. */
    public Point paper(double x, double y) {
        return new Point((x - left) / scale, (bottom - y) / scale);
    }

    /** Pixels from the left. */
    public double x(double mm) {
        return left + mm * scale;
    }

    /** Pixels from the top. */
    public double y(double mm) {
        return bottom - mm * scale;
    }

    private static double clamped(double value, double least, double most) {
        return Math.max(least, Math.min(Math.max(least, most), value));
    }
}
