package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import org.standwright.part.Part;
import org.standwright.solid.layer.Ring;

/**
 * What a part's solid is made of, on the grid: a blank and the cuts into it. Equal workpieces have one solid, whatever
 * they are called.
 *
 * @param board the box that the part fills
 * @param blank the board at its outline
 */
record Workpiece(Extent board, Prism blank, List<Cut> cuts) {
    Workpiece {
        cuts = List.copyOf(cuts);
    }

    static Workpiece of(Part part, Fineness fineness) {
        var board = new Extent(
                0,
                0,
                0,
                Solid.units("length", part.length(), part.name()),
                Solid.units("width", part.width(), part.name()),
                Solid.units("thickness", part.thickness(), part.name()));
        var contour = part.contour();
        var outline = contour.isPresent()
                ? Rings.polygon(contour.get().outline(), part.name())
                : Ring.rectangle(0, 0, board.x1(), board.y1());
        if (!outline.isSomething() || board.z1() == 0) {
            throw SolidException.vanishing(part.name());
        }
        var tools = new Tools(part, board, fineness);
        var cuts = new ArrayList<Cut>();
        for (var feature : part.features()) {
            var cut = feature.accept(tools);
            if (cut.isPresent()) {
                cuts.add(cut.get());
            }
        }
        return new Workpiece(board, Prism.upright(outline, 0, board.z1()), cuts);
    }

    /** Whether a ring seen from above lies all within the blank and touches its outline nowhere. */
    boolean isAmidst(Ring ring) {
        return ring.isAmidst(blank.ring());
    }

    /** Whether nothing was cut off the board to make the blank. */
    boolean isWholeBoard() {
        var outline = blank.ring();
        return outline.isRectangle()
                && outline.minU() == board.x0()
                && outline.minV() == board.y0()
                && outline.maxU() == board.x1()
                && outline.maxV() == board.y1();
    }

    /** The tools of all cuts, each once. */
    List<Tool> tools() {
        return cuts.stream().flatMap(cut -> cut.tools().stream()).distinct().toList();
    }
}
