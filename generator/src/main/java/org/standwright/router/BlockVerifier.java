package org.standwright.router;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.standwright.cutlist.Together;
import org.standwright.cutlist.Together.Along;
import org.standwright.cutlist.Together.Kind;
import org.standwright.geom.Grid;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.sheet.GroupFinder;

/**
 * Whether the pieces of one material stay together that are to for their figure: on one sheet, or one after the other in
 * a strip, in their own direction and with no more than the spacing between, see {@link GroupFinder}. What a saw cuts from
 * one blank to hold it safely is held by its sheet here.
 */
final class BlockVerifier implements GroupFinder.Choices<BlockVerifier.Spot> {
    /** What rounding of both sides up to the planner's unit may add to a gap, mm. */
    private static final double ROUNDING = 1e-3;

    /** One piece of the material on one of its boards. */
    record Spot(int sheet, int index, RoutedPiece piece) {
        /** Its blank on the board. */
        Rect blank() {
            return Outline.of(CutOutline.rough(piece.part())).moved(piece.lie()).bounds();
        }
    }

    private final List<Spot> spots = new ArrayList<>();
    private final int sheets;
    private final double spacing;

    private BlockVerifier(List<RoutedSheet> sheets, double spacing) {
        this.sheets = sheets.size();
        this.spacing = spacing;
        for (int i = 0; i < sheets.size(); i++) {
            var pieces = sheets.get(i).pieces();
            for (int j = 0; j < pieces.size(); j++) {
                spots.add(new Spot(i, j, pieces.get(j)));
            }
        }
    }

    /** The first group that finds no place, with all before it in theirs. */
    static List<String> faults(List<RoutedSheet> sheets, List<Together> groups, double spacing) {
        var verifier = new BlockVerifier(sheets, spacing);
        var figured =
                groups.stream().filter(group -> group.kind() != Kind.ONE_BLANK).toList();
        return GroupFinder.homeless(figured, verifier).stream()
                .map(verifier::fault)
                .toList();
    }

    private String fault(Together group) {
        var place = group.kind() == Kind.ONE_SHEET
                ? "on one sheet"
                : "side by side, " + String.format(Locale.ROOT, "%.3f mm apart", spacing);
        return "pieces " + group.labels() + " do not lie " + place + ".";
    }

    @Override
    public int count(Together group) {
        return group.kind() == Kind.ONE_SHEET ? sheets : spots.size();
    }

    @Override
    public List<Spot> take(Together group, int choice, Set<Spot> used) {
        return group.kind() == Kind.ONE_SHEET ? sheet(group, choice, used) : strip(group, spots.get(choice), used);
    }

    private static boolean isFree(Spot spot, String label, Set<Spot> used) {
        return spot.piece().label().equals(label) && !used.contains(spot);
    }

    private List<Spot> sheet(Together group, int sheet, Set<Spot> used) {
        var taken = new ArrayList<Spot>();
        for (var label : group.labels()) {
            spots.stream()
                    .filter(spot -> spot.sheet() == sheet && isFree(spot, label, used) && !taken.contains(spot))
                    .findFirst()
                    .ifPresent(taken::add);
        }
        return taken.size() == group.labels().size() ? taken : List.of();
    }

    private List<Spot> strip(Together group, Spot first, Set<Spot> used) {
        if (!isFree(first, group.labels().get(0), used)) {
            return List.of();
        }
        var along = group.along() == Along.LENGTH ? new Vec2(1, 0) : new Vec2(0, 1);
        var lie = first.piece().lie();
        var on = lie.apply(along).minus(lie.apply(Vec2.ZERO));
        var taken = new ArrayList<>(List.of(first));
        for (var label : group.labels().subList(1, group.labels().size())) {
            var last = taken.get(taken.size() - 1);
            spots.stream()
                    .filter(spot -> isFree(spot, label, used) && follows(last, spot, on))
                    .findFirst()
                    .ifPresent(taken::add);
        }
        return taken.size() == group.labels().size() ? taken : List.of();
    }

    /** @param on the way to the next one on the board, one of the four directions */
    private boolean follows(Spot last, Spot next, Vec2 on) {
        var a = last.blank();
        var b = next.blank();
        double gap = on.x() > 0.5
                ? b.x0() - a.x1()
                : on.x() < -0.5 ? a.x0() - b.x1() : on.y() > 0.5 ? b.y0() - a.y1() : a.y0() - b.y1();
        boolean inRow =
                Math.abs(on.x()) > 0.5 ? Math.abs(a.y0() - b.y0()) <= ROUNDING : Math.abs(a.x0() - b.x0()) <= ROUNDING;
        return last.sheet() == next.sheet()
                && last.piece().lie().quarters() == next.piece().lie().quarters()
                && !Grid.less(gap, spacing)
                && gap <= spacing + ROUNDING
                && inRow;
    }
}
