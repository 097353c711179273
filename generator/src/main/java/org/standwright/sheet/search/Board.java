package org.standwright.sheet.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.CutTree;
import org.standwright.sheet.lane.BoardInWork;
import org.standwright.sheet.lane.Dice;

/**
 * One board's cut tree in flat arrays, sizes enlarged by the kerf and no places yet: pieces, rests, and splits whose
 * nodes lie one after the other. What {@link CutNode} says holds here too: no split in a split of the same direction,
 * at most one rest in a split (the order of its nodes is free, so rests merge), at least two nodes.
 *
 * <p>A node is the place of its first field in {@link #at}; a node keeps its place in copies.
 */
final class Board implements BoardInWork<Board> {
    /** What a node is where it is no piece; a piece's own value is its type. */
    private static final int REST = -1;

    private static final int RIP = -2;
    private static final int CROSSCUT = -3;
    private static final int GONE = -4;
    /** A strip from side to side that stays free. */
    private static final int KEPT = -5;

    private static final int NONE = -1;
    private static final int WHAT = 0;
    private static final int LENGTH = 1;
    private static final int WIDTH = 2;
    private static final int PARENT = 3;
    private static final int FIRST = 4;
    private static final int NEXT = 5;
    private static final int FIELDS = 6;
    /** Nodes that a copy can take before it grows. */
    private static final int SPARE = 6;

    private final Terms terms;
    private final int kind;
    private int[] at;
    private int end;
    private int gone = NONE;
    private int[] rests;
    private int restCount;
    private long mark;
    private long pieceArea;
    private final long owner;

    private Board(Terms terms, int kind, long owner, int[] at, int[] rests) {
        this.terms = terms;
        this.kind = kind;
        this.owner = owner;
        this.at = at;
        this.rests = rests;
    }

    /** An uncut board. */
    static Board whole(Terms terms, int kind, long owner) {
        var board = new Board(terms, kind, owner, new int[8 * FIELDS], new int[4]);
        var size = terms.kind(kind);
        int root = board.node(NONE, REST, size.length(), size.width());
        board.addRest(root);
        return board;
    }

    /**
     * A board of which a strip from side to side stays free.
     *
     * @param rip whether a rip parts the strip from the rest
     * @param strip its extent square to the cut
     */
    static Board keeping(Terms terms, int kind, long owner, boolean rip, int strip) {
        var board = whole(terms, kind, owner);
        int length = board.at[LENGTH];
        int width = board.at[WIDTH];
        board.dropRest(0);
        board.at[WHAT] = rip ? RIP : CROSSCUT;
        board.node(0, KEPT, rip ? length : strip, rip ? strip : width);
        board.addRest(
                rip
                        ? board.node(0, REST, length, width - strip - terms.ripExtra(length))
                        : board.node(0, REST, length - strip - terms.crosscutExtra(width), width));
        return board;
    }

    /** A board as a tree says. */
    static Board of(Terms terms, CutTree tree, long owner) {
        var board = whole(terms, tree.kind(), owner);
        board.dropRest(0);
        board.become(0, tree.root());
        return board;
    }

    private void become(int node, CutNode tree) {
        if (tree instanceof CutNode.Piece piece) {
            at[node + WHAT] = piece.type();
            mark += terms.mark[piece.type()];
            pieceArea += terms.tally.area(piece.type());
        } else if (tree instanceof CutNode.Split split) {
            at[node + WHAT] = split.direction() == Direction.RIP ? RIP : CROSSCUT;
            for (var inner : split.nodes()) {
                become(node(node, REST, inner.length(), inner.width()), inner);
            }
        } else {
            addRest(node);
        }
    }

    /** The same board, to be changed by another owner. */
    @Override
    public Board copy(long newOwner) {
        var copy = new Board(
                terms,
                kind,
                newOwner,
                Arrays.copyOf(at, end + SPARE * FIELDS),
                Arrays.copyOf(rests, restCount + SPARE));
        copy.end = end;
        copy.gone = gone;
        copy.restCount = restCount;
        copy.mark = mark;
        copy.pieceArea = pieceArea;
        return copy;
    }

    @Override
    public int kind() {
        return kind;
    }

    @Override
    public long owner() {
        return owner;
    }

    /** A sum of its pieces' marks: equal for boards of the same pieces. */
    long mark() {
        return mark;
    }

    @Override
    public long pieceArea() {
        return pieceArea;
    }

    boolean isWhole() {
        return at[WHAT] == REST;
    }

    int restCount() {
        return restCount;
    }

    int rest(int index) {
        return rests[index];
    }

    int length(int node) {
        return at[node + LENGTH];
    }

    int width(int node) {
        return at[node + WIDTH];
    }

    /** Sum of the worth of its rests. */
    @Override
    public double restValue() {
        double sum = 0;
        for (int i = 0; i < restCount; i++) {
            sum += terms.values.of(at[rests[i] + LENGTH], at[rests[i] + WIDTH]);
        }
        return sum;
    }

    /**
     * How many stages of cuts lead to a rest, and which direction the last of them has: 2 * stages, plus 1 where the
     * last are crosscuts; 0 for a whole board.
     */
    int stages(int rest) {
        int last = at[rest + PARENT];
        if (last == NONE) {
            return 0;
        }
        int stages = 0;
        int node = last;
        for (; node != NONE; node = at[node + PARENT]) {
            stages++;
        }
        return 2 * (stages + (startsAcross() ? 1 : 0)) + (at[last + WHAT] == CROSSCUT ? 1 : 0);
    }

    /** Whether its first cuts are not those that the saw is asked to begin with. */
    boolean startsAcross() {
        return switch (terms.rules.first()) {
            case EITHER -> false;
            case RIP -> at[WHAT] == CROSSCUT;
            case CROSSCUT -> at[WHAT] == RIP;
        };
    }

    /** Whether one of the root's nodes is a piece from one side of the board to the other. */
    boolean hasSpanningPiece() {
        for (int node = at[FIRST]; node != NONE; node = at[node + NEXT]) {
            if (at[node + WHAT] >= 0) {
                return true;
            }
        }
        return false;
    }

    /**
     * Lays a piece into the corner of a rest. The first cut is not made where the piece is as large as the rest.
     *
     * @param ripFirst whether the first cut is a rip; the second, if any, is square to it
     */
    void insert(int rest, int type, int along, int across, boolean ripFirst) {
        int length = at[rest + LENGTH];
        int width = at[rest + WIDTH];
        dropRest(rest);
        mark += terms.mark[type];
        pieceArea += terms.tally.area(type);
        if (along == length && across == width) {
            at[rest + WHAT] = type;
            return;
        }
        boolean rip = ripFirst ? across < width : along == length;
        int strip = rip
                ? strip(rest, RIP, length, across, length, width - across - terms.ripExtra(length))
                : strip(rest, CROSSCUT, along, width, length - along - terms.crosscutExtra(width), width);
        if (rip && along == length || !rip && across == width) {
            at[strip + WHAT] = type;
            return;
        }
        at[strip + WHAT] = rip ? CROSSCUT : RIP;
        node(strip, type, along, across);
        int left = rip
                ? node(strip, REST, length - along - terms.crosscutExtra(across), across)
                : node(strip, REST, along, width - across - terms.ripExtra(along));
        addRest(left);
    }

    /** Cuts a strip of this size off a rest; what lies beside it is a rest again. */
    private int strip(int rest, int direction, int length, int width, int besideLength, int besideWidth) {
        int parent = at[rest + PARENT];
        if (parent != NONE && at[parent + WHAT] == direction) {
            at[rest + LENGTH] = length;
            at[rest + WIDTH] = width;
            addRest(node(parent, REST, besideLength, besideWidth));
            return rest;
        }
        at[rest + WHAT] = direction;
        int strip = node(rest, GONE, length, width);
        addRest(node(rest, REST, besideLength, besideWidth));
        return strip;
    }

    /**
     * Takes a piece or a whole split off; what is left around it becomes one rest.
     *
     * @param missing counts up each piece by its type
     */
    void remove(int node, int[] missing) {
        release(node, missing);
        int rest = node;
        while (true) {
            int parent = at[rest + PARENT];
            if (parent == NONE) {
                break;
            }
            merge(parent, rest);
            if (at[parent + FIRST] != rest || at[rest + NEXT] != NONE) {
                break;
            }
            free(rest);
            rest = parent;
        }
        at[rest + WHAT] = REST;
        at[rest + FIRST] = NONE;
        addRest(rest);
    }

    /** Joins the other rest of a split, if any, to this one. */
    private void merge(int parent, int rest) {
        int before = NONE;
        for (int node = at[parent + FIRST]; node != NONE; node = at[node + NEXT]) {
            if (node != rest && at[node + WHAT] == REST) {
                if (at[parent + WHAT] == RIP) {
                    at[rest + WIDTH] += at[node + WIDTH] + terms.ripExtra(at[parent + LENGTH]);
                } else {
                    at[rest + LENGTH] += at[node + LENGTH] + terms.crosscutExtra(at[parent + WIDTH]);
                }
                if (before == NONE) {
                    at[parent + FIRST] = at[node + NEXT];
                } else {
                    at[before + NEXT] = at[node + NEXT];
                }
                dropRest(node);
                free(node);
                return;
            }
            before = node;
        }
    }

    /** Gives up a node's pieces and all nodes below it; the node itself stays, as nothing yet. */
    private void release(int node, int[] missing) {
        int what = at[node + WHAT];
        if (what >= 0) {
            missing[what]++;
            mark -= terms.mark[what];
            pieceArea -= terms.tally.area(what);
        } else if (what == REST) {
            dropRest(node);
        } else {
            int next;
            for (int child = at[node + FIRST]; child != NONE; child = next) {
                next = at[child + NEXT];
                release(child, missing);
                free(child);
            }
        }
        at[node + WHAT] = GONE;
        at[node + FIRST] = NONE;
    }

    /** Any of its pieces and splits without a kept strip, each as likely as the other. There must be a piece on it. */
    int any(Dice dice) {
        while (true) {
            int node = dice.below(end / FIELDS) * FIELDS;
            int what = at[node + WHAT];
            if (what >= 0 || (what == RIP || what == CROSSCUT) && (node > 0 || !keepsStrip())) {
                return node;
            }
        }
    }

    private boolean keepsStrip() {
        for (int node = at[FIRST]; node != NONE; node = at[node + NEXT]) {
            if (at[node + WHAT] == KEPT) {
                return true;
            }
        }
        return false;
    }

    /** Area of its largest rest as it lies in the workshop, the kerf taken off, units². */
    @Override
    public long largestRest() {
        long largest = 0;
        for (int node = 0; node < end; node += FIELDS) {
            if (at[node + WHAT] == REST || at[node + WHAT] == KEPT) {
                largest = Math.max(largest, terms.offcut(at[node + LENGTH], at[node + WIDTH]));
            }
        }
        return largest;
    }

    boolean has(int type) {
        return piece(type) != NONE;
    }

    /** Takes one piece of the type off, which must be there. */
    void removeOne(int type, int[] missing) {
        remove(piece(type), missing);
    }

    private int piece(int type) {
        for (int node = 0; node < end; node += FIELDS) {
            if (at[node + WHAT] == type) {
                return node;
            }
        }
        return NONE;
    }

    /** Counts its pieces by type. */
    @Override
    public int[] counts() {
        var counts = new int[terms.types()];
        for (int node = 0; node < end; node += FIELDS) {
            if (at[node + WHAT] >= 0) {
                counts[at[node + WHAT]]++;
            }
        }
        return counts;
    }

    CutNode tree() {
        return tree(0);
    }

    private CutNode tree(int node) {
        int what = at[node + WHAT];
        int length = at[node + LENGTH];
        int width = at[node + WIDTH];
        if (what >= 0) {
            return new CutNode.Piece(what, length, width, length != terms.length[what]);
        }
        if (what == REST || what == KEPT) {
            return new CutNode.Rest(length, width);
        }
        var nodes = new ArrayList<CutNode>();
        for (int child = at[node + FIRST]; child != NONE; child = at[child + NEXT]) {
            nodes.add(tree(child));
        }
        var direction = what == RIP ? Direction.RIP : Direction.CROSSCUT;
        return new CutNode.Split(direction, length, width, oneRest(nodes, what == RIP, length, width));
    }

    /** A kept strip and the rest beside it are one rest in the end. */
    private List<CutNode> oneRest(List<CutNode> nodes, boolean rip, int length, int width) {
        var rests = nodes.stream().filter(CutNode.Rest.class::isInstance).toList();
        if (rests.size() < 2) {
            return nodes;
        }
        int extra = rip ? terms.ripExtra(length) : terms.crosscutExtra(width);
        int together = rests.stream()
                        .mapToInt(rest -> rip ? rest.width() : rest.length())
                        .sum()
                + extra;
        var joined = new ArrayList<>(nodes);
        joined.removeAll(rests);
        joined.add(rip ? new CutNode.Rest(length, together) : new CutNode.Rest(together, width));
        return joined;
    }

    private int node(int parent, int what, int length, int width) {
        int node = gone;
        if (node == NONE) {
            node = end;
            end += FIELDS;
            if (end > at.length) {
                at = Arrays.copyOf(at, 2 * at.length);
            }
        } else {
            gone = at[node + NEXT];
        }
        at[node + WHAT] = what;
        at[node + LENGTH] = length;
        at[node + WIDTH] = width;
        at[node + PARENT] = parent;
        at[node + FIRST] = NONE;
        at[node + NEXT] = NONE;
        if (parent != NONE) {
            at[node + NEXT] = at[parent + FIRST];
            at[parent + FIRST] = node;
        }
        return node;
    }

    private void free(int node) {
        at[node + WHAT] = GONE;
        at[node + NEXT] = gone;
        gone = node;
    }

    private void addRest(int node) {
        if (restCount == rests.length) {
            rests = Arrays.copyOf(rests, 2 * restCount);
        }
        rests[restCount++] = node;
    }

    private void dropRest(int node) {
        int i = 0;
        while (rests[i] != node) {
            i++;
        }
        rests[i] = rests[--restCount];
    }
}
