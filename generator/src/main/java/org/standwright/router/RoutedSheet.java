package org.standwright.router;

import java.util.List;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Face;

/** One board and the parts that are cut from it. */
public record RoutedSheet(StockSheet from, List<RoutedPiece> pieces) {
    public RoutedSheet {
        pieces = List.copyOf(pieces);
    }

    /** Whether it has to be turned over for work on the other faces of some parts. */
    public boolean isTwoSided() {
        return pieces.stream().anyMatch(piece -> FaceUp.worked(piece.part()).size() == Face.values().length);
    }
}
