package org.standwright.design.stand;

import java.util.Comparator;
import java.util.List;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.StockSheet;
import org.standwright.design.kit.Trim;
import org.standwright.geom.Grid;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.unit.Units;

/** The boards that parts of one material can be cut from. */
final class BoardChoice {
    private final List<StockSheet> boards;
    private final Units units;
    private final Trim trim;
    private final List<String> anyGrain;

    BoardChoice(StandDesign design, Material material) {
        this.boards = design.boards().stream()
                .filter(board -> board.material().equals(material))
                .toList();
        this.units = design.unit();
        this.trim = design.saw().trim();
        this.anyGrain = design.cutting().anyGrain();
    }

    boolean fit(Part part) {
        return boards.stream().anyMatch(board -> excess(part, board) == 0);
    }

    /** Whether it would fit if its grain did not have to run along the board's. */
    boolean fitTurned(Part part) {
        return boards.stream().anyMatch(board -> excess(part.roughWidth(), part.roughLength(), board) == 0);
    }

    /** The board that a part overhangs least. */
    StockSheet nearest(Part part) {
        return boards.stream()
                .min(Comparator.comparingDouble(board -> excess(part, board)))
                .orElseThrow();
    }

    /** Its size as it is cut, and that of the nearest board, which does not hold it. */
    String tooLarge(Part part) {
        var nearest = nearest(part);
        return units.length(part.roughLength()) + " x " + units.length(part.roughWidth()) + ", larger than a sheet of "
                + nearest.name() + " after trimming (" + units.length(nearest.length() - trim.offLength()) + " x "
                + units.length(nearest.width() - trim.offWidth()) + ")";
    }

    /** The least board for a length along its grain and a width across it, on the tape. */
    String leastSheet(double length, double width) {
        return Exact.up(units, length + trim.offLength()) + " long and " + Exact.up(units, width + trim.offWidth())
                + " wide";
    }

    private double excess(Part part, StockSheet board) {
        double straight = excess(part.roughLength(), part.roughWidth(), board);
        boolean free = board.material().grain() == Grain.NONE || anyGrain.contains(part.name());
        return free ? Math.min(straight, excess(part.roughWidth(), part.roughLength(), board)) : straight;
    }

    /** Overhang at the end and at the side together, 0 where it fits, mm. */
    private double excess(double along, double across, StockSheet board) {
        return over(along, board.length() - trim.offLength()) + over(across, board.width() - trim.offWidth());
    }

    private static double over(double size, double room) {
        return Grid.less(room, size) ? size - room : 0;
    }
}
