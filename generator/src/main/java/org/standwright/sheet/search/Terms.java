package org.standwright.sheet.search;

import java.util.List;
import java.util.SplittableRandom;
import org.standwright.design.kit.Saw.First;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/** A packing job in arrays, as the search's inner loops want it. Never changes. */
final class Terms {
    /**
     * What a bought board costs at least in the search's own count; an at-hand one costs 1, so that it is used where it
     * helps and left on the rack where it does not.
     */
    static final long DEAR = 1 << 20;

    final PackingJob job;
    final Values values;
    final int[] length;
    final int[] width;
    final long[] area;
    final boolean[] straight;
    final boolean[] turned;
    final boolean[] mating;
    final long[] mark;
    final long[] cost;
    final CutRules rules;
    /** Whether stages or the first direction are limited. */
    final boolean restricted;

    private final int most;
    private final boolean[] starts;

    Terms(PackingJob job) {
        this.job = job;
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
        this.area = types.stream().mapToLong(PieceType::area).toArray();
        this.mark = new SplittableRandom(types.size()).longs(types.size()).toArray();
        this.cost = job.kinds().stream()
                .mapToLong(kind -> kind.cost() == 0 ? 1 : Math.multiplyExact(kind.cost(), DEAR))
                .toArray();
        this.straight = new boolean[types.size()];
        this.turned = new boolean[types.size()];
        this.mating = new boolean[types.size()];
        for (int i = 0; i < types.size(); i++) {
            straight[i] = types.get(i).allows(false);
            turned[i] = types.get(i).allows(true);
            mating[i] = types.get(i).mating();
        }
        this.starts = new boolean[types.size() * cost.length];
        for (int i = 0; i < starts.length; i++) {
            var type = types.get(i / cost.length);
            var kind = job.kinds().get(i % cost.length);
            starts[i] = startsOn(kind, type, false) || startsOn(kind, type, true);
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
        return starts[type * cost.length + kind];
    }

    private boolean startsOn(BoardKind kind, PieceType type, boolean lying) {
        int along = type.along(lying);
        int across = type.across(lying);
        return type.fits(kind, lying)
                && (cuts(0, kind.length(), kind.width(), along, across, true)
                        || cuts(0, kind.length(), kind.width(), along, across, false));
    }

    /**
     * Whether a piece can be cut out of a rest with its first cut in this direction. Where the piece is as wide as the
     * rest there is no first rip, and where it is as long no first crosscut; a piece as large as the rest counts as
     * ripped first.
     *
     * @param stages of the cuts that lead to the rest, as {@link Board#stages} tells them
     */
    boolean cuts(int stages, int restLength, int restWidth, int along, int across, boolean ripFirst) {
        int beside = ripFirst ? restWidth - across : restLength - along;
        int end = ripFirst ? restLength - along : restWidth - across;
        if (beside == 0) {
            return ripFirst && end == 0 && isOpen(stages);
        }
        return left(beside, ripFirst ? ripExtra(restLength) : crosscutExtra(restWidth)) > 0
                && left(end, ripFirst ? crosscutExtra(across) : ripExtra(along)) >= 0
                && (!restricted || isAllowed(stages, ripFirst, end > 0));
    }

    /** What a cut leaves of so much room: 0 where there is none and no cut, -1 where the cut can't be made. */
    static int left(int room, int extra) {
        if (room == 0) {
            return 0;
        }
        return extra == CutRules.NONE || extra >= room ? -1 : room - extra;
    }

    /** Whether anything may be cut from a rest: what a trimming cut beyond the last stage leaves is waste. */
    private boolean isOpen(int stages) {
        return stages / 2 <= most;
    }

    /** A piece may need one trimming cut beyond the last stage. */
    private boolean isAllowed(int stages, boolean ripFirst, boolean second) {
        if (stages == 0) {
            boolean asAsked = rules.first() == First.EITHER || ripFirst == (rules.first() == First.RIP);
            return asAsked || !second;
        }
        boolean same = ripFirst == (stages % 2 == 0);
        int first = stages / 2 + (same ? 0 : 1);
        return isOpen(stages) && (first <= most || first == most + 1 && !second);
    }
}
