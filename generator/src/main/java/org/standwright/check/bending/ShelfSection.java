package org.standwright.check.bending;

import java.util.Optional;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Edging;
import org.standwright.geom.Axis;
import org.standwright.geom.Grid;
import org.standwright.part.Board;

/** The section of a shelf, a divider or a bottom from front to back, with the lipping on its front edge. */
final class ShelfSection {
    private ShelfSection() {}

    /** Tape adds nothing; a glued lipping is as high as the panel and bends with it. */
    static Section of(PlacedPart level, StandDesign design) {
        double thickness = level.part().thickness();
        double modulus = GrainWay.modulus(level, Axis.X_PLUS);
        double whole = level.part().width();
        double cut = level.part().cutWidth();
        var board = new Section.Rectangle(cut, 0, thickness, modulus);
        return isLipped(design.edges().carcass()) && Grid.less(cut, whole)
                ? Section.lipped(
                        board, whole - cut, thickness, Board.SOLID_WOOD.usual().along())
                : Section.plank(cut, thickness, modulus);
    }

    private static boolean isLipped(Optional<Edging> edging) {
        return edging.map(cover -> cover.kind() == Edging.Kind.LIPPING).orElse(false);
    }
}
