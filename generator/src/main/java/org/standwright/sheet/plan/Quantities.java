package org.standwright.sheet.plan;

import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/** Whether the boards that pieces can come from have the area for them, where their number is limited. */
final class Quantities {
    private final Work work;
    private final PackingJob job;

    Quantities(Work work) {
        this.work = work;
        this.job = work.job();
    }

    /** Asks for all pieces that have to come from limited boards, then for those of each choice of boards. */
    void check() {
        var choices = job.types().stream().map(this::boards).toList();
        choices.stream().filter(this::isLimited).reduce(Quantities::both).ifPresent(all -> check(all, choices));
        choices.stream().filter(this::isLimited).distinct().forEach(boards -> check(boards, choices));
    }

    private void check(BitSet boards, List<BitSet> choices) {
        double needed = IntStream.range(0, choices.size())
                .filter(type -> within(choices.get(type), boards))
                .mapToObj(job.types()::get)
                .mapToDouble(type -> (double) type.area() * type.count())
                .sum();
        double there = boards.stream()
                .mapToObj(job.kinds()::get)
                .mapToDouble(kind -> (double) kind.area() * kind.count())
                .sum();
        if (needed > there) {
            throw tooFew(boards, needed, there);
        }
    }

    private ImpossiblePlanException tooFew(BitSet boards, double needed, double there) {
        int largest = boards.stream()
                .boxed()
                .max((a, b) -> Long.compare(
                        job.kinds().get(a).area(), job.kinds().get(b).area()))
                .orElseThrow();
        long more = (long) Math.ceil((needed - there) / job.kinds().get(largest).area());
        var sheet = work.sheets().get(largest);
        return new ImpossiblePlanException(
                "/stock/sheets",
                String.format(
                        Locale.ROOT,
                        "the boards of '%s' that are there have %.2f m² with their kerfs, but the pieces that can only come from them need %.2f m².",
                        sheet.material().name(),
                        SheetUnit.squareMetres(there),
                        SheetUnit.squareMetres(needed)),
                List.of("Have at least " + more + " more of '" + sheet.name() + "', or leave out its count."));
    }

    private BitSet boards(PieceType type) {
        var boards = new BitSet();
        for (int kind = 0; kind < job.kinds().size(); kind++) {
            boards.set(kind, job.rules().begins(type, job.kinds().get(kind)));
        }
        return boards;
    }

    private boolean isLimited(BitSet boards) {
        return boards.stream().noneMatch(kind -> job.kinds().get(kind).count() == BoardKind.UNLIMITED);
    }

    private static boolean within(BitSet some, BitSet all) {
        var outside = (BitSet) some.clone();
        outside.andNot(all);
        return outside.isEmpty();
    }

    private static BitSet both(BitSet a, BitSet b) {
        var both = (BitSet) a.clone();
        both.or(b);
        return both;
    }
}
