package org.standwright.sheet.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.sheet.job.CutTree;
import org.standwright.sheet.job.Pack;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.lane.Dice;
import org.standwright.sheet.plan.Seeds;

/** A is 40 x 30, B 20 x 30, C 100 x 30, D 100 x 60, E 60 x 10; the board is 100 x 60. */
class BoardTest {
    private static final int A = 0;
    private static final int B = 1;
    private static final int C = 2;
    private static final int D = 3;
    private static final int E = 4;

    private final PackingJob job = Pack.boards(100, 60)
            .pieces(40, 30, 9)
            .pieces(20, 30, 9)
            .pieces(100, 30, 9)
            .pieces(100, 60, 9)
            .pieces(60, 10, 9)
            .job();
    private final Terms terms = new Terms(job);
    private final Board board = Board.whole(terms, 0, 0);
    private final int[] missing = new int[job.types().size()];

    static LongStream seeds() {
        return Seeds.fewOrMany(60, 3000);
    }

    @Test
    void ripsAStripAndCrosscutsThePieceOffIt() {
        insert(board, 100, 60, A, true);

        assertThat(text(board)).isEqualTo("rip(crosscut(40x30 A|rest 60x30)|rest 100x30)");
        assertThat(board.restCount()).isEqualTo(2);
        assertThat(board.pieceArea()).isEqualTo(1200);
    }

    @Test
    void crosscutsAStripAndRipsThePieceOffIt() {
        insert(board, 100, 60, A, false);

        assertThat(text(board)).isEqualTo("crosscut(rest 60x60|rip(40x30 A|rest 40x30))");
    }

    @Test
    void makesOneCutWhereThePieceReachesFromSideToSideAndNoneWhereItIsTheBoard() {
        insert(board, 100, 60, C, true);
        var full = Board.whole(terms, 0, 0);
        insert(full, 100, 60, D, true);

        assertThat(text(board)).isEqualTo("rip(100x30 C|rest 100x30)");
        assertThat(text(full)).isEqualTo("100x60 D");
        assertThat(full.restCount()).isZero();
    }

    @Test
    void laysStripsOfOneDirectionSideBySide() {
        insert(board, 100, 60, A, true);
        insert(board, 60, 30, B, true);
        insert(board, 100, 30, C, true);

        assertThat(text(board)).isEqualTo("rip(100x30 C|crosscut(20x30 B|40x30 A|rest 40x30))");
    }

    @Test
    void joinsWhatAPieceLeavesToTheRestBesideIt() {
        insert(board, 100, 60, A, true);
        insert(board, 60, 30, B, true);
        board.removeOne(A, missing);

        assertThat(text(board)).isEqualTo("rip(crosscut(20x30 B|rest 80x30)|rest 100x30)");
        assertThat(missing).containsExactly(1, 0, 0, 0, 0);
        assertThat(board.restCount()).isEqualTo(2);
        assertThat(board.pieceArea()).isEqualTo(600);
    }

    @Test
    void makesAStripWithoutPiecesARestOfItsBoard() {
        insert(board, 100, 60, A, true);
        insert(board, 100, 30, C, true);
        board.removeOne(A, missing);

        assertThat(text(board)).isEqualTo("rip(100x30 C|rest 100x30)");
    }

    @Test
    void isWholeAgainWithoutPieces() {
        insert(board, 100, 60, A, true);
        insert(board, 60, 30, E, false);
        board.removeOne(A, missing);
        board.removeOne(E, missing);

        assertThat(board.isWhole()).isTrue();
        assertThat(text(board)).isEqualTo("rest 100x60");
        assertThat(board.restCount()).isEqualTo(1);
        assertThat(board.mark()).isEqualTo(Board.whole(terms, 0, 0).mark());
    }

    @Test
    void leavesTheOriginalAsItIsWhenACopyChanges() {
        insert(board, 100, 60, A, true);
        var copy = board.copy(1);
        insert(copy, 60, 30, B, true);
        copy.removeOne(A, missing);

        assertThat(text(board)).isEqualTo("rip(crosscut(40x30 A|rest 60x30)|rest 100x30)");
        assertThat(text(copy)).isEqualTo("rip(crosscut(20x30 B|rest 80x30)|rest 100x30)");
    }

    @Test
    void keepsAStripFreeWhateverComesAndGoes() {
        var keeping = Board.keeping(terms, 0, 0, true, 20);
        assertThat(keeping.restCount()).isEqualTo(1);
        insert(keeping, 100, 40, A, true);
        assertThat(text(keeping)).isEqualTo("rip(crosscut(40x30 A|rest 60x30)|rest 100x30)");
        for (int i = 0; i < 20; i++) {
            keeping.remove(keeping.any(new Dice(i)), missing);
            assertThat(keeping.restCount()).isEqualTo(1);
            assertThat(keeping.length(keeping.rest(0))).isEqualTo(100);
            assertThat(keeping.width(keeping.rest(0))).isEqualTo(40);
            assertThat(keeping.largestRest()).isEqualTo(4000);
            insert(keeping, 100, 40, A, true);
        }
    }

    /** Pieces come and go at random: the tree stays plain, whatever the saw's rules, and counts what is on it. */
    @ParameterizedTest
    @MethodSource("seeds")
    void staysPlainWhateverComesAndGoes(long seed) {
        var pack = RandomPack.of(seed);
        var packTerms = new Terms(pack);
        var random = new SplittableRandom(seed);
        var changed = Board.whole(packTerms, 0, 0);
        var off = new int[pack.types().size()];
        var on = new int[pack.types().size()];
        for (int i = 0; i < 60; i++) {
            int type = random.nextInt(on.length);
            if (random.nextInt(3) == 0 && changed.has(type)) {
                changed.removeOne(type, off);
                on[type]--;
            } else if (changed.restCount() > 0 && tryToInsert(packTerms, changed, type, random)) {
                on[type]++;
            }
            assertThat(changed.counts()).containsExactly(on);
            assertThat(treeFaults(pack, changed)).isEmpty();
        }
    }

    /** Faults of the tree itself: what is missing and how many stages it takes are the search's matter. */
    private static List<String> treeFaults(PackingJob pack, Board changed) {
        if (changed.isWhole()) {
            return List.of();
        }
        var faults = TreeCheck.faults(pack, List.of(new CutTree(0, changed.tree())));
        return faults.stream()
                .filter(fault ->
                        !fault.startsWith("type ") && !fault.startsWith("stage ") && !fault.startsWith("a first cut"))
                .toList();
    }

    private static boolean tryToInsert(Terms packTerms, Board changed, int type, SplittableRandom random) {
        int rest = changed.rest(random.nextInt(changed.restCount()));
        boolean turned = random.nextBoolean();
        boolean ripFirst = random.nextBoolean();
        var piece = packTerms.job.types().get(type);
        int along = piece.along(turned);
        int across = piece.across(turned);
        boolean fits = piece.allows(turned)
                && along <= changed.length(rest)
                && across <= changed.width(rest)
                && (packTerms.kind(0).mating() || !piece.mating())
                && packTerms.cuts(
                        changed.stages(rest), changed.length(rest), changed.width(rest), along, across, ripFirst);
        if (fits) {
            changed.insert(rest, type, along, across, ripFirst);
        }
        return fits;
    }

    /** Into the rest of this size. */
    private void insert(Board into, int restLength, int restWidth, int type, boolean ripFirst) {
        for (int i = 0; i < into.restCount(); i++) {
            int rest = into.rest(i);
            if (into.length(rest) == restLength && into.width(rest) == restWidth) {
                into.insert(rest, type, terms.length[type], terms.width[type], ripFirst);
                return;
            }
        }
        throw new AssertionError("no rest of " + restLength + " x " + restWidth + " in " + text(into));
    }

    private static String text(Board shown) {
        return TreeText.of(shown.tree());
    }
}
