package org.standwright.router.plan;

import org.standwright.cutlist.CutLine;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Face;
import org.standwright.part.Part;
import org.standwright.router.CutOutline;
import org.standwright.router.FaceUp;
import org.standwright.router.Lie;
import org.standwright.router.RoutedPiece;

/**
 * One piece of a cut line as a rectangle for the router.
 *
 * @param around that rectangle in the part's frame: no part of its outline is outside
 */
record Blank(CutLine line, Rect around) {
    /** The smallest one. */
    static Blank least(CutLine line) {
        return new Blank(line, CutOutline.of(line.part()).bounds());
    }

    /** The rough blank that a saw would cut; what lies in one strip has to agree in it. */
    static Blank rough(CutLine line) {
        return new Blank(line, CutOutline.rough(line.part()));
    }

    /** The same line of plain rectangles. */
    CutLine plain() {
        var part = Part.blank(line.part().name(), line.material(), around.width(), around.height());
        return new CutLine(line.label(), part, line.members(), line.notes());
    }

    boolean isOverturned() {
        return FaceUp.of(line.part()) == Face.BENCH;
    }

    /** What it is cut to with the right face up, the lower left corner of the rectangle at the origin. */
    Outline outline() {
        return CutOutline.of(line.part()).moved(lie(0, Vec2.ZERO));
    }

    /** @param corner lower left one of the rectangle on the board, mm */
    RoutedPiece at(Vec2 corner, int quarters) {
        return new RoutedPiece(line.label(), line.part(), lie(quarters, corner));
    }

    private Lie lie(int quarters, Vec2 corner) {
        var turned = new Lie(isOverturned(), quarters, Vec2.ZERO);
        var bounds = Outline.of(around).moved(turned).bounds();
        return turned.moved(corner.minus(new Vec2(bounds.x0(), bounds.y0())));
    }
}
