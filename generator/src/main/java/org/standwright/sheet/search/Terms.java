package org.standwright.sheet.search;

import java.util.List;
import java.util.SplittableRandom;
import org.standwright.design.kit.Saw.First;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.lane.Tally;
import org.standwright.sheet.lane.Values;

/** A packing job in arrays, as the search's inner loops want it. Never changes. */
final class Terms {
    final PackingJob job;
    final Tally tally;
    final Values values;
    final int[] length;
    final int[] width;
    final boolean[] straight;
    final boolean[] turned;
    final boolean[] mating;
    final long[] mark;
    final CutRules rules;
    /** Whether stages or the first direction are limited. */
    final boolean restricted;

    private final int most;
    private final boolean[] starts;

    Terms(PackingJob job) {
        this.job = job;
        this.tally = new Tally(job);
        this.rules = job.rules();
        this.restricted = rules.stages() != CutRules.ANY || rules.first() != First.EITHER;
        this.most = rules.stages() == CutRules.ANY ? CutRules.ANY - 1 : rules.stages();
        this.values = new Values(job.kinds().stream()
                .mapToLong(BoardKind::area)
                .max()
                .orElseThrow(
                        () -> new IllegalArgumentException("a packing job without boards; name one to cut from.")));
        List<PieceType> types = job.types();
        this.length = types.stream().mapToInt(PieceType::length).toArray();
        this.width = types.stream().mapToInt(PieceType::width).toArray();
        this.mark = new SplittableRandom(types.size()).longs(types.size()).toArray();
        this.straight = new boolean[types.size()];
        this.turned = new boolean[types.size()];
        this.mating = new boolean[types.size()];
        for (int i = 0; i < types.size(); i++) {
            straight[i] = types.get(i).allows(false);
            turned[i] = types.get(i).allows(true);
            mating[i] = types.get(i).mating();
        }
        this.starts = new boolean[types.size() * tally.kinds()];
        for (int i = 0; i < starts.length; i++) {
            var type = types.get(i / tally.kinds());
            var kind = job.kinds().get(i % tally.kinds());
            starts[i] = rules.begins(type, kind);
        }
    }

    int types() {
        return length.length;
    }

    BoardKind kind(int kind) {
        return job.kinds().get(kind);
    }

    /** Area of a rest as it lies in the workshop, units². */
    long offcut(int restLength, int restWidth) {
        return (long) Math.max(0, restLength - rules.kerf()) * Math.max(0, restWidth - rules.kerf());
    }

    /** What a rip of a panel this long takes beyond the kerf; {@link CutRules#NONE} when it can't be made. */
    int ripExtra(int panelLength) {
        return rules.extra(Direction.RIP, panelLength);
    }

    int crosscutExtra(int panelWidth) {
        return rules.extra(Direction.CROSSCUT, panelWidth);
    }

    /** Whether a piece of the type can be the first that is cut from a board of the kind. */
    boolean starts(int type, int kind) {
        return starts[type * tally.kinds() + kind];
    }

    /**
     * Whether a piece can be cut out of a rest with its first cut in this direction, see {@link CutRules#frees}.
     *
     * @param stages of the cuts that lead to the rest, as {@link Board#stages} tells them
     */
    boolean cuts(int stages, int restLength, int restWidth, int along, int across, boolean ripFirst) {
        return rules.frees(ripFirst ? Direction.RIP : Direction.CROSSCUT, restLength, restWidth, along, across)
                && (!restricted || isAllowed(stages, ripFirst, ripFirst ? along < restLength : across < restWidth));
    }

    /** A piece may need one trimming cut beyond the last stage; what that leaves is waste. */
    private boolean isAllowed(int stages, boolean ripFirst, boolean second) {
        if (stages == 0) {
            return rules.begins(ripFirst ? Direction.RIP : Direction.CROSSCUT, !second);
        }
        boolean same = ripFirst == (stages % 2 == 0);
        int first = stages / 2 + (same ? 0 : 1);
        return stages / 2 <= most && (first <= most || first == most + 1 && !second);
    }
}
