package org.standwright.router.plan.places;

import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.PackingJob;
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

    private final boolean[] fits;

    Terms(PackingJob job) {
        this.job = job;
        this.tally = new Tally(job);
        this.values =
                new Values(job.kinds().stream().mapToLong(BoardKind::area).max().orElseThrow());
        var types = job.types();
        this.length = types.stream().mapToInt(type -> type.length()).toArray();
        this.width = types.stream().mapToInt(type -> type.width()).toArray();
        this.straight = new boolean[types.size()];
        this.turned = new boolean[types.size()];
        this.fits = new boolean[types.size() * tally.kinds()];
        for (int type = 0; type < types.size(); type++) {
            straight[type] = types.get(type).allows(false);
            turned[type] = types.get(type).allows(true);
            for (int kind = 0; kind < tally.kinds(); kind++) {
                fits[type * tally.kinds() + kind] = types.get(type).fits(kind(kind));
            }
        }
    }

    int types() {
        return length.length;
    }

    BoardKind kind(int kind) {
        return job.kinds().get(kind);
    }

    /** Whether a piece can be cut from this kind of board, its thickness included. */
    boolean fits(int type, int kind) {
        return fits[type * tally.kinds() + kind];
    }

    int along(int type, boolean isTurned) {
        return isTurned ? width[type] : length[type];
    }

    int across(int type, boolean isTurned) {
        return isTurned ? length[type] : width[type];
    }

    /** Area of a free rectangle as it lies in the workshop, units². */
    long rest(int restLength, int restWidth) {
        int spacing = job.rules().kerf();
        return (long) Math.max(0, restLength - spacing) * Math.max(0, restWidth - spacing);
    }
}
