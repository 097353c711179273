package org.standwright.viewer.hand;

import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import org.standwright.geom.Rect;

/**
 * Which pixel shows which point of a picture.
 *
 * @param factor pixels a millimetre
 * @param left where x = 0 is seen, pixels
 * @param floor where y = 0 is seen, pixels from the top
 */
record Scale(double factor, double left, double floor) {
    /** All of a picture in the middle of so many pixels. */
    static Scale fitted(Rect picture, double width, double height) {
        double factor = Math.max(1e-6, Math.min(width / picture.width(), height / picture.height()));
        return new Scale(
                factor,
                (width - factor * picture.width()) / 2 - factor * picture.x0(),
                (height + factor * picture.height()) / 2 + factor * picture.y0());
    }

    double x(double mm) {
        return left + factor * mm;
    }

    double y(double mm) {
        return floor - factor * mm;
    }

    double mmAt(double x) {
        return (x - left) / factor;
    }

    double heightAt(double y) {
        return (floor - y) / factor;
    }

    Bounds seen(Rect area) {
        return new BoundingBox(x(area.x0()), y(area.y1()), factor * area.width(), factor * area.height());
    }
}
