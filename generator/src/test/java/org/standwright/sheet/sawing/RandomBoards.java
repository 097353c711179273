package org.standwright.sheet.sawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.Cutting;
import org.standwright.design.kit.BreakDown;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.design.kit.Trim;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.Proof;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.Stock;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.CutTree;

/**
 * Boards divided at random by edge-to-edge cuts, each piece a line of its own: kerf, trim, a saw that reaches so far, a
 * hand-held one for the rest, pieces that wait.
 */
final class RandomBoards {
    private static final Material BOARD = new Material("plain board", 18, 650, Grain.NONE);
    private static final Keep KEEP = new Keep(25, 25);
    private static final int LEAST = 40 * SheetUnit.PER_MM;

    private final SplittableRandom random;
    private final Saw saw;
    private final CutRules rules;
    private final List<CutLine> lines = new ArrayList<>();
    private final List<Block> blocks = new ArrayList<>();
    private final Set<String> later = new HashSet<>();
    private final List<CutTree> trees = new ArrayList<>();
    private final StockSheet from;

    private RandomBoards(long seed) {
        this.random = new SplittableRandom(seed);
        boolean limited = random.nextInt(3) > 0;
        this.saw = new Saw(
                random.nextInt(1, 50) / 10.0,
                new Trim(mm(0, 15), mm(0, 15), mm(0, 15), mm(0, 15)),
                OptionalInt.empty(),
                Saw.First.EITHER,
                limited ? OptionalDouble.of(mm(300, 2500)) : OptionalDouble.empty(),
                limited ? OptionalDouble.of(mm(300, 1300)) : OptionalDouble.empty(),
                mm(0, 300),
                limited ? Optional.of(new BreakDown(random.nextInt(5, 50) / 10.0, mm(0, 8))) : Optional.empty());
        this.rules = rules(saw);
        this.from = new StockSheet(
                "board",
                BOARD,
                mm(800, 2500),
                mm(600, 1300),
                18,
                OptionalInt.empty(),
                Optional.empty(),
                StockSheet.Source.BOUGHT);
        int boards = random.nextInt(1, 4);
        for (int i = 0; i < boards; i++) {
            var size = new PlannedSheet(from, List.of(), List.of(), List.of()).trimmed(saw);
            trees.add(new CutTree(
                    0, node(size.length() + rules.kerf(), size.width() + rules.kerf(), Optional.empty(), 0)));
        }
        lines.stream().filter(line -> random.nextInt(4) == 0).forEach(line -> later.add(line.label()));
    }

    static RandomBoards of(long seed) {
        return new RandomBoards(seed);
    }

    /** What the search is told of a saw. */
    static CutRules rules(Saw saw) {
        int kerf = SheetUnit.up(saw.kerf());
        return new CutRules(
                kerf,
                CutRules.ANY,
                saw.first(),
                longest(saw.longestRip(), kerf),
                longest(saw.longestCrosscut(), kerf),
                saw.breakDown()
                        .map(hand -> Math.max(0, 2 * SheetUnit.up(hand.allowance()) + SheetUnit.up(hand.kerf()) - kerf))
                        .orElse(CutRules.NONE));
    }

    private static int longest(OptionalDouble longest, int kerf) {
        return longest.isPresent() ? SheetUnit.down(longest.getAsDouble()) + kerf : CutRules.ANY;
    }

    private double mm(int from, int to) {
        return random.nextInt(from, to + 1);
    }

    private CutNode node(int length, int width, Optional<Direction> above, int depth) {
        boolean whole = depth > 0 && random.nextInt(6) <= depth;
        if (!whole) {
            var direction = above.map(RandomBoards::across)
                    .orElseGet(() -> random.nextBoolean() ? Direction.RIP : Direction.CROSSCUT);
            var nodes = strips(direction, length, width, depth);
            if (nodes.size() > 1) {
                return new CutNode.Split(direction, length, width, nodes);
            }
        }
        return piece(length, width);
    }

    private CutNode piece(int length, int width) {
        boolean turned = random.nextBoolean();
        var label = "P" + (lines.size() + 1);
        double along = SheetUnit.mm((turned ? width : length) - rules.kerf());
        double across = SheetUnit.mm((turned ? length : width) - rules.kerf());
        var line = new CutLine(label, Part.blank(label, BOARD, along, across), List.of(label), List.of());
        lines.add(line);
        blocks.add(Block.piece(line, turned ? width : length, turned ? length : width));
        return new CutNode.Piece(lines.size() - 1, length, width, turned);
    }

    private static Direction across(Direction direction) {
        return direction == Direction.RIP ? Direction.CROSSCUT : Direction.RIP;
    }

    /** Two to five strips, some of one width, and now and then a rest of any size. */
    private List<CutNode> strips(Direction direction, int length, int width, int depth) {
        boolean rip = direction == Direction.RIP;
        int extent = rip ? width : length;
        int extra = rules.extra(direction, rip ? length : width);
        var nodes = new ArrayList<CutNode>();
        if (extra == CutRules.NONE || extent < 3 * LEAST) {
            return nodes;
        }
        int count = random.nextInt(2, 6);
        int same = random.nextInt(LEAST, Math.max(LEAST + 1, extent / count));
        int left = extent;
        while (nodes.size() + 1 < count && left > 2 * LEAST + 2 * extra) {
            int strip = random.nextBoolean() ? same : random.nextInt(LEAST, left - LEAST - extra);
            if (left - strip - extra < LEAST) {
                break;
            }
            nodes.add(node(rip ? length : strip, rip ? strip : width, Optional.of(direction), depth + 1));
            left -= strip + extra;
        }
        if (nodes.isEmpty()) {
            return nodes;
        }
        if (random.nextInt(3) == 0) {
            int rest = random.nextInt(3) == 0 ? random.nextInt(1, 2 * rules.kerf()) : left;
            int piece = left - rest - extra;
            if (piece >= LEAST) {
                nodes.add(node(rip ? length : piece, rip ? piece : width, Optional.of(direction), depth + 1));
                left = rest;
            }
            nodes.add(new CutNode.Rest(rip ? length : left, rip ? left : width));
        } else {
            nodes.add(node(rip ? length : left, rip ? left : width, Optional.of(direction), depth + 1));
        }
        return nodes;
    }

    Stock stock() {
        return new Stock(List.of(from), saw, KEEP);
    }

    CutList cutList() {
        return new CutList(lines, List.of(), new Cutting(later, Set.of(), Set.of(), List.of()));
    }

    MaterialPlan material() {
        var sheets = Sawing.of(List.of(from), trees, blocks, saw, KEEP, later);
        return new MaterialPlan(BOARD, sheets, new Proof(Proof.Goal.SHEETS, sheets.size(), 1));
    }

    SheetPlan plan() {
        return new SheetPlan(saw, List.of(material()), true);
    }

    @Override
    public String toString() {
        return saw + "\n" + from + "\n" + trees;
    }
}
