package org.standwright.sheet.bound;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/**
 * A cost that no plan stays below, in the unit of {@link BoardKind#cost}: the number of boards where there is one kind
 * at a cost of 1. The arguments hold for any way of cutting. More is known about cuts from edge
 * to edge; it takes longer to work out.
 */
public final class LowerBound {
    private LowerBound() {}

    /** Of a job whose pieces all fit some kind of board. */
    public static long of(PackingJob job) {
        return Stream.of(job, matingOnly(job), tooLargeForOffcuts(job))
                .distinct()
                .filter(part -> !part.types().isEmpty() && !part.kinds().isEmpty())
                .mapToLong(LowerBound::ofPart)
                .max()
                .orElse(0);
    }

    /** What pieces cost that can't have just any board: the others may come along for nothing. */
    private static PackingJob matingOnly(PackingJob job) {
        return part(job, PieceType::mating, BoardKind::mating);
    }

    private static PackingJob tooLargeForOffcuts(PackingJob job) {
        var free = job.kinds().stream().filter(kind -> kind.cost() == 0).toList();
        return part(job, type -> free.stream().noneMatch(type::fits), kind -> kind.cost() > 0);
    }

    private static PackingJob part(PackingJob job, Predicate<PieceType> types, Predicate<BoardKind> kinds) {
        List<PieceType> chosen = job.types().stream().filter(types).toList();
        return new PackingJob(chosen, job.kinds().stream().filter(kinds).toList(), job.rules());
    }

    private static long ofPart(PackingJob job) {
        return Math.max(LargePieces.of(job), DualFeasibleBound.of(job));
    }
}
