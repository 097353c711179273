package org.standwright.sheet.bound;

import java.util.ArrayList;
import java.util.SplittableRandom;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.job.PieceType.Ways;

/** Random jobs of up to six pieces and three kinds of boards that {@link TinyOptimum} solves; each piece fits one. */
final class TinyJobs {
    private TinyJobs() {}

    static PackingJob random(long seed) {
        var random = new SplittableRandom(seed);
        int side = random.nextInt(3, 30);
        var kinds = new ArrayList<BoardKind>();
        kinds.add(new BoardKind(
                side, random.nextInt(3) == 0 ? side : random.nextInt(2, 30), BoardKind.UNLIMITED, 1, true));
        int more = random.nextInt(4) == 0 ? 0 : random.nextInt(3);
        for (int i = 0; i < more; i++) {
            kinds.add(new BoardKind(
                    random.nextInt(2, 30),
                    random.nextInt(2, 30),
                    random.nextInt(1, 3),
                    random.nextInt(3),
                    random.nextBoolean()));
        }
        if (random.nextInt(3) == 0) {
            kinds.set(0, new BoardKind(side, kinds.get(0).width(), BoardKind.UNLIMITED, 3, true));
        }
        int pieces = random.nextInt(1, 7);
        var types = new ArrayList<PieceType>();
        while (pieces > 0) {
            int count = random.nextInt(1, pieces + 1);
            var type = new PieceType(
                    random.nextInt(1, kinds.get(0).length() + 1),
                    random.nextInt(1, kinds.get(0).width() + 1),
                    count,
                    random.nextInt(3) == 0 ? Ways.STRAIGHT : Ways.EITHER,
                    random.nextInt(4) == 0);
            types.add(type);
            pieces -= count;
        }
        return new PackingJob(types, kinds, CutRules.free(0));
    }
}
