package org.standwright.design.wall.holder;

import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.StockSheet;
import org.standwright.geom.Grid;
import org.standwright.part.Grain;
import org.standwright.part.Part;

/** Every board must come out of one sheet of its material. */
record SheetRoom(HolderFrame frame) {
    void check(List<PlacedPart> parts) {
        parts.forEach(this::check);
    }

    /** Whether any sheet of its material holds it. */
    boolean fits(Part part) {
        return frame.design().boards().stream()
                .anyMatch(board -> board.material().equals(part.material()) && fits(part, board));
    }

    private void check(PlacedPart placed) {
        var part = placed.part();
        if (!fits(part)) {
            var trim = frame.design().saw().trim();
            var units = frame.design().unit();
            throw frame.refused(
                    "",
                    "needs a board '" + part.name() + "' " + frame.length(part.length()) + " x "
                            + frame.length(part.width()) + ", larger than any sheet of "
                            + part.material().name() + " after trimming.",
                    "Make it narrower, let it hold fewer or smaller things, or make two holders of it.",
                    "Or use a sheet " + Exact.up(units, part.length() + trim.offLength()) + " long and "
                            + Exact.up(units, part.width() + trim.offWidth()) + " wide or more.");
        }
    }

    private boolean fits(Part part, StockSheet board) {
        var trim = frame.design().saw().trim();
        double length = board.length() - trim.offLength();
        double width = board.width() - trim.offWidth();
        boolean turns = board.material().grain() == Grain.NONE
                || frame.design().cutting().anyGrain().contains(part.name());
        return fits(part.roughLength(), part.roughWidth(), length, width)
                || turns && fits(part.roughWidth(), part.roughLength(), length, width);
    }

    private static boolean fits(double along, double across, double length, double width) {
        return !Grid.less(length, along) && !Grid.less(width, across);
    }
}
