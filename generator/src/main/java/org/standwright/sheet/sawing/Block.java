package org.standwright.sheet.sawing;

import java.util.List;
import java.util.stream.Collectors;
import org.standwright.cutlist.CutLine;
import org.standwright.sheet.job.CutNode;

/**
 * What one type of a packing job is in the workshop: a piece, or several that leave the sheet as one block.
 *
 * @param pieces their cut lines, one for each piece
 * @param inner how they lie in the block when it lies straight, sizes enlarged by the kerf; types count in {@code pieces}
 */
public record Block(List<CutLine> pieces, Parting parting, CutNode inner) {
    /** How a block becomes pieces. */
    public enum Parting {
        /** It is one piece. */
        NONE,
        /** By cuts of the sheet plan. */
        ON_SHEET,
        /** After it has left the sheet: it is cut oversize to be held safely. */
        LATER,
        /** By one rip with the blade tilted, which gives two strips. */
        BEVEL
    }

    public Block {
        pieces = List.copyOf(pieces);
    }

    /** One piece, of this size enlarged by the kerf. */
    public static Block piece(CutLine line, int length, int width) {
        return new Block(List.of(line), Parting.NONE, new CutNode.Piece(0, length, width, false));
    }

    /** Labels of its pieces: 'A', or 'C + C + D'. */
    public String label() {
        return pieces.stream().map(CutLine::label).collect(Collectors.joining(" + "));
    }
}
