package org.standwright.sheet.search;

import java.util.ArrayList;
import java.util.SplittableRandom;
import org.standwright.design.kit.Saw.First;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.job.PieceType.Ways;

/**
 * Packing jobs of all sorts: several kinds of boards, stages, long cuts, fixed directions. Every piece fits a board that
 * there is without end, though a saw that does not reach far may be unable to cut it out.
 */
final class RandomPack {
    private final SplittableRandom random;

    private RandomPack(long seed) {
        this.random = new SplittableRandom(seed);
    }

    static PackingJob of(long seed) {
        return new RandomPack(seed).job();
    }

    private PackingJob job() {
        var kinds = new ArrayList<BoardKind>();
        kinds.add(new BoardKind(between(60, 120), between(40, 100), BoardKind.UNLIMITED, between(1, 9), true));
        for (int i = random.nextInt(3); i > 0; i--) {
            int count = random.nextBoolean() ? BoardKind.UNLIMITED : between(1, 3);
            kinds.add(new BoardKind(
                    between(20, 150),
                    between(20, 120),
                    count,
                    random.nextInt(3) * between(1, 9),
                    random.nextBoolean()));
        }
        var first = kinds.get(0);
        var types = new ArrayList<PieceType>();
        for (int i = between(1, 25); i > 0; i--) {
            var ways = Ways.values()[random.nextInt(3)];
            int most = ways == Ways.STRAIGHT ? first.width() : Math.min(first.length(), first.width());
            int length = between(3, ways == Ways.STRAIGHT ? first.length() : most);
            types.add(new PieceType(length, between(3, most), between(1, 4), ways, random.nextInt(4) == 0));
        }
        return new PackingJob(types, kinds, rules());
    }

    private CutRules rules() {
        int stages = random.nextBoolean() ? CutRules.ANY : between(2, 3);
        var first = First.values()[random.nextInt(3)];
        boolean breaksDown = random.nextInt(3) == 0;
        return new CutRules(
                between(0, 3),
                stages,
                first,
                breaksDown ? between(30, 100) : CutRules.ANY,
                breaksDown ? between(30, 100) : CutRules.ANY,
                breaksDown ? between(0, 4) : CutRules.NONE);
    }

    private int between(int least, int most) {
        return random.nextInt(least, most + 1);
    }
}
