package org.standwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import org.standwright.cutlist.Together;
import org.standwright.cutlist.Together.Kind;
import org.standwright.sheet.Cut.Purpose;

/** Finds the panels of one board that left it as one block: those that hold the pieces of a group and nothing else. */
final class BlockPanels {
    /** A panel as it is before a cut goes between its pieces. */
    private record Held(Area panel, List<String> labels) {}

    private final List<Held> all;

    private BlockPanels(List<Held> all) {
        this.all = all;
    }

    /** @param groups that the board may hold blocks of; blanks are no blocks, since the board's cuts leave them whole */
    static BlockPanels of(PlannedSheet sheet, CutReplay replay, List<Together> groups) {
        var wanted = groups.stream()
                .filter(BlockPanels::isBlock)
                .map(BlockPanels::labels)
                .toList();
        var found = new ArrayList<Held>();
        for (var sawn : replay.sawn()) {
            var panel = sawn.panel().area();
            var pieces = sawn.panel().pieces(sheet).toList();
            boolean parts = sawn.cut().purpose() == Purpose.DIVIDE
                    && sawn.halves().stream()
                            .allMatch(half -> half.pieces(sheet).count() < pieces.size());
            var labels = pieces.stream().map(PlacedPiece::label).sorted().toList();
            // panels are divided from the outside in
            if (parts && wanted.contains(labels) && found.stream().noneMatch(held -> held.panel.holds(panel))) {
                found.add(new Held(panel, labels));
            }
        }
        return new BlockPanels(found);
    }

    /** All of them; more than there are groups where other pieces happen to lie like a block. */
    List<Area> all() {
        return all.stream().map(Held::panel).toList();
    }

    /**
     * As many for each group as there are such groups, those first that need it most.
     *
     * @param late how many cuts of a panel come too late unless it is a block
     */
    List<Area> latest(List<Together> groups, ToIntFunction<Area> late) {
        var latest = new ArrayList<Area>();
        for (var labels : all.stream().map(Held::labels).distinct().toList()) {
            Predicate<Together> alike = group -> isBlock(group) && labels(group).equals(labels);
            all.stream()
                    .filter(held -> held.labels.equals(labels))
                    .map(Held::panel)
                    .sorted(Comparator.comparingInt(late).reversed())
                    .limit(groups.stream().filter(alike).count())
                    .forEach(latest::add);
        }
        return latest;
    }

    private static boolean isBlock(Together group) {
        return group.kind() != Kind.ONE_BLANK;
    }

    private static List<String> labels(Together group) {
        return group.labels().stream().sorted().toList();
    }
}
