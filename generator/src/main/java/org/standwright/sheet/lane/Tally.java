package org.standwright.sheet.lane;

import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/** What a layout is counted by: what boards cost and what pieces cover. Never changes. */
public final class Tally {
    /**
     * What a bought board costs at least in the search's own count; an at-hand one costs 1, so that it is used where it
     * helps and left on the rack where it does not.
     */
    public static final long DEAR = 1 << 15;

    private final PackingJob job;
    private final long[] cost;
    private final long[] area;

    public Tally(PackingJob job) {
        this.job = job;
        this.cost = job.kinds().stream()
                .mapToLong(kind -> kind.cost() == 0 ? 1 : count(kind.cost()))
                .toArray();
        this.area = job.types().stream().mapToLong(PieceType::area).toArray();
    }

    /** A cost of the job in the search's own count. */
    public static long count(long cost) {
        return Math.multiplyExact(cost, DEAR);
    }

    public int kinds() {
        return cost.length;
    }

    public BoardKind kind(int kind) {
        return job.kinds().get(kind);
    }

    /** Of a board of this kind, in the search's own count. */
    public long cost(int kind) {
        return cost[kind];
    }

    /** Of one piece of this type, enlarged by the kerf, units². */
    public long area(int type) {
        return area[type];
    }

    /** Pieces that the job asks for, by type. */
    int[] needed() {
        return job.types().stream().mapToInt(PieceType::count).toArray();
    }
}
