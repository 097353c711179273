package org.standwright.sheet.search;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.standwright.sheet.Cut;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/** Finds the insertion that costs least, over every rest, allowed turn and first cut. */
final class InsertionSearch {
    private final PackingJob job;
    private final BooleanSupplier overlook;

    /** @param overlook asked at each candidate; true leaves it out */
    InsertionSearch(PackingJob job, BooleanSupplier overlook) {
        this.job = job;
        this.overlook = overlook;
    }

    Optional<Insertion> cheapest(Layout layout, int type) {
        var best = new Cheapest(type);
        for (int board = 0; board < layout.boards().size(); board++) {
            for (var rest : layout.boards().get(board).rests()) {
                best.offer(board, rest, false);
                if (job.types().get(type).ways() == PieceType.Ways.EITHER) {
                    best.offer(board, rest, true);
                }
            }
        }
        return Optional.ofNullable(best.insertion);
    }

    /** In how many ways a piece of the type fits, counted no further than just over {@code enough}. */
    int count(Layout layout, int type, int enough) {
        var piece = job.types().get(type);
        int count = 0;
        for (var board : layout.boards()) {
            for (var rest : board.rests()) {
                count += fits(rest, piece, false) ? 1 : 0;
                count += piece.ways() == PieceType.Ways.EITHER && fits(rest, piece, true) ? 1 : 0;
                if (count > enough) {
                    return count;
                }
            }
        }
        return count;
    }

    private static boolean fits(CutNode.Rest rest, PieceType piece, boolean turned) {
        return piece.along(turned) <= rest.length() && piece.across(turned) <= rest.width();
    }

    private final class Cheapest {
        private final int type;
        private final PieceType piece;
        private Insertion insertion;
        private double cost = Double.POSITIVE_INFINITY;

        Cheapest(int type) {
            this.type = type;
            this.piece = job.types().get(type);
        }

        void offer(int board, CutNode.Rest rest, boolean turned) {
            if (fits(rest, piece, turned)) {
                offer(board, rest, turned, Cut.Direction.RIP);
                offer(board, rest, turned, Cut.Direction.CROSSCUT);
            }
        }

        private void offer(int board, CutNode.Rest rest, boolean turned, Cut.Direction first) {
            double candidate = Insertion.cost(rest, piece.along(turned), piece.across(turned), first);
            if (candidate < cost && !overlook.getAsBoolean()) {
                cost = candidate;
                insertion = new Insertion(board, rest, type, turned, first);
            }
        }
    }
}
