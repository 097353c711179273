package org.standwright.sheet.sawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.Cutting;
import org.standwright.cutlist.Together;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Bevel;
import org.standwright.part.Edge;
import org.standwright.part.Face;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.sheet.Cut;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.Proof;
import org.standwright.sheet.SetUp;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.SheetPlanVerifier;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.Stock;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.CutRules;
import org.standwright.sheet.job.CutTree;

/** Boards divided by hand, sizes in mm; each board is as large as what it is divided into, and its trim. */
final class Shop {
    static final Keep KEEP = new Keep(25, 25);

    final Saw saw;
    private final Material material;
    private final CutRules rules;
    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final Map<String, Integer> counts = new LinkedHashMap<>();
    private final List<Block> blocks = new ArrayList<>();
    private final List<StockSheet> from = new ArrayList<>();
    private final List<CutTree> trees = new ArrayList<>();
    Set<String> later = Set.of();
    Set<String> free = Set.of();
    List<Together> together = List.of();

    Shop(Saw saw, Grain grain) {
        this.saw = saw;
        this.material = new Material("board", 18, 650, grain);
        this.rules = RandomBoards.rules(saw);
    }

    Shop(Saw saw) {
        this(saw, Grain.NONE);
    }

    CutNode piece(String label, double length, double width) {
        return placed(Block.piece(line(label, length, width), size(length), size(width)), false);
    }

    CutNode turned(String label, double length, double width) {
        return placed(Block.piece(line(label, length, width), size(length), size(width)), true);
    }

    /** Pieces of one size one after the other along their length. */
    CutNode row(Block.Parting parting, boolean turned, double length, double width, String... labels) {
        var lines = Stream.of(labels).map(label -> line(label, length, width)).toList();
        var inner = new ArrayList<CutNode>();
        for (int i = 0; i < lines.size(); i++) {
            inner.add(new CutNode.Piece(i, size(length), size(width), false));
        }
        return placed(new Block(lines, parting, crosscut(inner.toArray(CutNode[]::new))), turned);
    }

    /** Two strips of 45°, long faces this wide, from a blank of this width. */
    CutNode bevel(String label, double length, double strip, double blank) {
        var line = line(label, length, strip);
        line(label, length, strip);
        parts.put(label, parts.get(label).with(new Bevel(Edge.Y1, Face.SHOW, 45, 18)));
        var inner = new CutNode.Piece(0, size(length), size(blank), false);
        return placed(new Block(List.of(line, line), Block.Parting.BEVEL, inner), false);
    }

    private CutLine line(String label, double length, double width) {
        parts.putIfAbsent(label, Part.blank(label, material, length, width));
        counts.merge(label, 1, Integer::sum);
        return new CutLine(label, parts.get(label), List.of(label), List.of());
    }

    private CutNode placed(Block block, boolean turned) {
        blocks.add(block);
        var inner = block.inner();
        return new CutNode.Piece(
                blocks.size() - 1,
                turned ? inner.width() : inner.length(),
                turned ? inner.length() : inner.width(),
                turned);
    }

    CutNode rest(double length, double width) {
        return new CutNode.Rest(size(length), size(width));
    }

    CutNode rip(CutNode... nodes) {
        int length = nodes[0].length();
        int width = Stream.of(nodes).mapToInt(CutNode::width).sum();
        return new CutNode.Split(Direction.RIP, length, width + extra(Direction.RIP, length, nodes), List.of(nodes));
    }

    CutNode crosscut(CutNode... nodes) {
        int width = nodes[0].width();
        int length = Stream.of(nodes).mapToInt(CutNode::length).sum();
        return new CutNode.Split(
                Direction.CROSSCUT, length + extra(Direction.CROSSCUT, width, nodes), width, List.of(nodes));
    }

    private int extra(Direction direction, int along, CutNode... nodes) {
        return (nodes.length - 1) * rules.extra(direction, along);
    }

    private int size(double mm) {
        return SheetUnit.up(mm) + rules.kerf();
    }

    Shop board(CutNode root) {
        return board(root, 18, OptionalInt.empty());
    }

    Shop board(CutNode root, double thickness, OptionalInt count) {
        from.add(new StockSheet(
                "board " + (from.size() + 1),
                material,
                SheetUnit.mm(root.length() - rules.kerf()) + saw.trim().offLength(),
                SheetUnit.mm(root.width() - rules.kerf()) + saw.trim().offWidth(),
                thickness,
                count,
                Optional.empty(),
                StockSheet.Source.BOUGHT));
        trees.add(new CutTree(from.size() - 1, root));
        return this;
    }

    /** The last board's kind once more. */
    Shop again(CutNode root) {
        trees.add(new CutTree(from.size() - 1, root));
        return this;
    }

    MaterialPlan plan() {
        return plan(Sawing.of(from, trees, blocks, saw, KEEP, later));
    }

    MaterialPlan plan(List<PlannedSheet> sheets) {
        return new MaterialPlan(material, sheets, new Proof(Proof.Goal.SHEETS, sheets.size(), 1));
    }

    List<String> faults() {
        return faults(plan());
    }

    List<String> faults(MaterialPlan plan) {
        var lines = parts.entrySet().stream()
                .map(part -> new CutLine(
                        part.getKey(),
                        part.getValue(),
                        Collections.nCopies(counts.get(part.getKey()), part.getKey()),
                        List.of()))
                .toList();
        return SheetPlanVerifier.faults(
                new Stock(from, saw, KEEP),
                new CutList(lines, List.of(), new Cutting(later, free, Set.of(), together)),
                new SheetPlan(saw, List.of(plan), true));
    }

    /** 'sheet 1: rip 200 from Y0: A, offcut' for each cut in order; those of one setting in one line. */
    static String text(MaterialPlan plan) {
        return plan.setUps().stream()
                .map(setUp -> (setUp.tool() == Cut.Tool.SAW ? "" : "by hand ")
                        + setUp.direction().name().toLowerCase(Locale.ROOT) + " " + mm(setUp.setting()) + ": "
                        + setUp.cuts().stream().map(Shop::text).collect(Collectors.joining("; ")))
                .collect(Collectors.joining("\n"));
    }

    private static String text(SetUp.Made made) {
        var frees = Stream.concat(
                        made.frees().stream().map(PlacedPiece::label),
                        made.offcuts().stream().map(left -> "offcut"))
                .collect(Collectors.joining(" "));
        var purpose = made.cut().purpose() == Cut.Purpose.DIVIDE
                ? ""
                : made.cut().purpose().name().toLowerCase(Locale.ROOT) + " ";
        return purpose + "sheet " + (made.sheet() + 1) + " from " + made.cut().reference()
                + (frees.isEmpty() ? "" : " " + frees);
    }

    static String mm(int units) {
        double mm = SheetUnit.mm(units);
        return mm == Math.rint(mm) ? Integer.toString((int) mm) : Double.toString(mm);
    }
}
