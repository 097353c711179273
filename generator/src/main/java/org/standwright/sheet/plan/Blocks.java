package org.standwright.sheet.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.Cutting;
import org.standwright.cutlist.Together;
import org.standwright.part.Grain;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.job.PieceType.Ways;
import org.standwright.sheet.sawing.Block;
import org.standwright.sheet.sawing.Block.Parting;

/** Sorts one material's pieces into blocks: what is kept together, pairs of strips from one bevel rip, single pieces. */
final class Blocks {
    private final Cutting cutting;
    private final BlockShapes shapes;
    private final List<Block> blocks = new ArrayList<>();
    private final List<PieceType> types = new ArrayList<>();
    /** How many of each line are in no block yet. */
    private final Map<CutLine, Integer> left = new LinkedHashMap<>();

    private Blocks(Cutting cutting, BlockShapes shapes) {
        this.cutting = cutting;
        this.shapes = shapes;
    }

    /**
     * @param together what is kept together of these lines
     * @throws ImpossiblePlanException when more pieces are to stay together than there are, or when they do not match
     */
    static Blocks of(List<CutLine> lines, Cutting cutting, List<Together> together, BlockShapes shapes) {
        var sorted = new Blocks(cutting, shapes);
        lines.forEach(line -> sorted.left.put(line, line.count()));
        var groups = new LinkedHashMap<Together, Integer>();
        together.forEach(group -> groups.merge(group, 1, Integer::sum));
        groups.forEach((group, count) -> {
            var members = sorted.taken(group, count);
            sorted.add(shapes.of(group, members, sorted.areFree(members)), count);
        });
        sorted.pairBevels();
        sorted.left.forEach((line, count) -> {
            if (count > 0) {
                sorted.add(shapes.piece(line), count);
            }
        });
        return sorted;
    }

    /** By index of their type in the job. */
    List<Block> blocks() {
        return blocks;
    }

    List<PieceType> types() {
        return types;
    }

    /** The lines of a group, which take their pieces off what is left. */
    private List<CutLine> taken(Together group, int count) {
        var lines = new ArrayList<CutLine>();
        for (var label : group.labels()) {
            var line = left.keySet().stream()
                    .filter(candidate -> candidate.label().equals(label))
                    .findFirst()
                    .orElseThrow(() -> refused("piece '" + label + "' cannot stay together with " + group.labels()
                            + ": it is not cut from the same sheets."));
            if (left.merge(line, -count, Integer::sum) < 0) {
                throw refused("more pieces '" + label + "' are to stay together than the " + line.count()
                        + " that the cut list has.");
            }
            lines.add(line);
        }
        return lines;
    }

    private void pairBevels() {
        for (var pair : BevelPairs.of(left)) {
            pair.lines().forEach(line -> left.merge(line, -pair.count(), Integer::sum));
            add(shapes.bevel(pair.lines(), pair.rise(), pair.tilt()), pair.count());
        }
    }

    private void add(Block block, int count) {
        blocks.add(block);
        types.add(new PieceType(block.inner().length(), block.inner().width(), count, ways(block), true));
    }

    /** Those that its grain allows and in which a saw parts it. */
    private Ways ways(Block block) {
        boolean free = areFree(block.pieces());
        var cuts = new BlockCuts(shapes.rules(), free);
        if (block.parting() != Parting.ON_SHEET) {
            return free ? Ways.EITHER : Ways.STRAIGHT;
        }
        if (!cuts.canPart(block.inner())) {
            throw new ImpossiblePlanException(
                    "/saw",
                    "'" + block.label() + "' cut as one block needs cuts that are too long for the saw to part it,"
                            + " without a break-down saw.",
                    List.of("Add a break-down saw: \"breakDown\": {}.", "Keep them apart."));
        }
        boolean straight = cuts.canPart(block.inner(), false);
        return free && cuts.canPart(block.inner(), true) ? straight ? Ways.EITHER : Ways.TURNED : Ways.STRAIGHT;
    }

    private boolean areFree(List<CutLine> lines) {
        return lines.stream().allMatch(this::isFree);
    }

    private boolean isFree(CutLine line) {
        return line.material().grain() == Grain.NONE || cutting.free().contains(line.label());
    }

    private static ImpossiblePlanException refused(String reason) {
        return new ImpossiblePlanException("/cutting/together", reason, List.of("Keep them apart."));
    }
}
