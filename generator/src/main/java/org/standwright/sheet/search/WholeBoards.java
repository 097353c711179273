package org.standwright.sheet.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.design.kit.Saw.First;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.CutTree;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.lane.Dice;

/**
 * Boards without any waste, for jobs whose pieces have the area of so many boards to the unit: joins pieces that have a
 * side of the same length to blocks, and blocks to boards, at random until it comes out. Searching from the board down
 * hardly ever finds such a plan; from the pieces up few joins are possible.
 */
final class WholeBoards {
    private static final int MOST_PIECES = 200;
    private static final int MOST_TRIES = 200;
    /** Comparisons of two blocks, all tries together. */
    private static final long WORK = 40_000_000;

    private final PackingJob job;
    private final int kind;
    private final BoardKind board;
    private final Dice dice;

    /** @param turns whether it may be turned as a whole */
    private record Block(CutNode node, boolean turns) {
        CutNode node(boolean turned) {
            return turned ? WholeBoards.turned(node) : node;
        }
    }

    private record Join(int a, int b, boolean turned, Direction direction) {}

    private WholeBoards(PackingJob job, int kind, Dice dice) {
        this.job = job;
        this.kind = kind;
        this.board = job.kinds().get(kind);
        this.dice = dice;
    }

    /** Boards of one kind that cost no more than the bound, all pieces on them. */
    static Optional<List<CutTree>> of(PackingJob job, long bound, long seed) {
        int pieces = job.pieceCount();
        for (int kind = 0; kind < job.kinds().size() && pieces <= MOST_PIECES; kind++) {
            var whole = new WholeBoards(job, kind, new Dice(seed));
            long tries = whole.canBe(bound) ? Math.min(MOST_TRIES, WORK / ((long) pieces * pieces * pieces)) : 0;
            for (int i = 0; i < tries; i++) {
                var boards = whole.joined();
                if (!boards.isEmpty()) {
                    return Optional.of(boards);
                }
            }
        }
        return Optional.empty();
    }

    private boolean canBe(long bound) {
        long count = job.pieceArea() / board.area();
        return job.pieceArea() % board.area() == 0
                && count <= board.count()
                && count * board.cost() <= bound
                && job.types().stream().allMatch(type -> type.fits(board));
    }

    /** None where it did not come out. */
    private List<CutTree> joined() {
        var blocks = pieces();
        var boards = new ArrayList<CutTree>();
        while (true) {
            takeBoards(blocks, boards);
            var joins = joins(blocks);
            if (joins.isEmpty()) {
                return blocks.isEmpty() ? boards : List.of();
            }
            var join = joins.get(dice.below(joins.size()));
            var a = blocks.get(join.a());
            var b = blocks.get(join.b());
            blocks.remove(Math.max(join.a(), join.b()));
            blocks.set(
                    Math.min(join.a(), join.b()),
                    new Block(beside(a.node(), b.node(join.turned()), join.direction()), a.turns() && b.turns()));
        }
    }

    private List<Block> pieces() {
        var blocks = new ArrayList<Block>();
        for (int i = 0; i < job.types().size(); i++) {
            var type = job.types().get(i);
            boolean turned = !type.allows(false);
            var node = new CutNode.Piece(i, type.along(turned), type.across(turned), turned);
            var block = new Block(node, type.ways() == PieceType.Ways.EITHER || type.length() == type.width());
            Stream.generate(() -> block).limit(type.count()).forEach(blocks::add);
        }
        return blocks;
    }

    private void takeBoards(List<Block> blocks, List<CutTree> boards) {
        for (int i = blocks.size() - 1; i >= 0; i--) {
            for (boolean turned : new boolean[] {false, true}) {
                var block = blocks.get(i);
                var node = block.node(turned);
                if ((!turned || block.turns())
                        && node.length() == board.length()
                        && node.width() == board.width()
                        && isAllowed(node)) {
                    boards.add(new CutTree(kind, node));
                    blocks.remove(i);
                    break;
                }
            }
        }
    }

    private List<Join> joins(List<Block> blocks) {
        var joins = new ArrayList<Join>();
        for (int a = 0; a < blocks.size(); a++) {
            for (int b = a + 1; b < blocks.size(); b++) {
                boolean second = blocks.get(b).turns();
                for (var direction : Direction.values()) {
                    add(joins, blocks, new Join(a, b, false, direction));
                    add(joins, blocks, new Join(second ? a : b, second ? b : a, true, direction));
                }
            }
        }
        return joins;
    }

    private void add(List<Join> joins, List<Block> blocks, Join join) {
        var a = blocks.get(join.a());
        var b = blocks.get(join.b());
        if (join.turned() && !b.turns()) {
            return;
        }
        boolean rip = join.direction() == Direction.RIP;
        int length = join.turned() ? b.node().width() : b.node().length();
        int width = join.turned() ? b.node().length() : b.node().width();
        if ((rip ? length : width) == (rip ? a.node().length() : a.node().width())) {
            int allLength = rip ? length : length + a.node().length();
            int allWidth = rip ? width + a.node().width() : width;
            if (fits(allLength, allWidth) || a.turns() && b.turns() && fits(allWidth, allLength)) {
                joins.add(join);
            }
        }
    }

    private boolean fits(int length, int width) {
        return length <= board.length() && width <= board.width();
    }

    private static CutNode beside(CutNode a, CutNode b, Direction direction) {
        boolean rip = direction == Direction.RIP;
        return CutNode.split(
                direction,
                rip ? a.length() : a.length() + b.length(),
                rip ? a.width() + b.width() : a.width(),
                List.of(a, b));
    }

    private static CutNode turned(CutNode node) {
        if (node instanceof CutNode.Split split) {
            var direction = split.direction() == Direction.RIP ? Direction.CROSSCUT : Direction.RIP;
            var nodes = split.nodes().stream().map(WholeBoards::turned).toList();
            return new CutNode.Split(direction, node.width(), node.length(), nodes);
        }
        var piece = (CutNode.Piece) node;
        boolean square = piece.length() == piece.width();
        return new CutNode.Piece(piece.type(), piece.width(), piece.length(), !square && !piece.turned());
    }

    private boolean isAllowed(CutNode root) {
        var first = job.rules().first();
        return (!(root instanceof CutNode.Split split)
                        || first == First.EITHER
                        || split.direction() == (first == First.RIP ? Direction.RIP : Direction.CROSSCUT))
                && isAllowed(root, 0);
    }

    /** @param stages that lead to the node */
    private boolean isAllowed(CutNode node, int stages) {
        if (node instanceof CutNode.Split split) {
            boolean rip = split.direction() == Direction.RIP;
            int extra = job.rules().extra(split.direction(), rip ? split.length() : split.width());
            return extra == 0
                    && (job.rules().stages() == CutRules.ANY
                            || stages < job.rules().stages())
                    && split.nodes().stream().allMatch(inner -> isAllowed(inner, stages + 1));
        }
        return true;
    }
}
