package org.standwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.standwright.cutlist.Together;
import org.standwright.cutlist.Together.Along;
import org.standwright.cutlist.Together.Kind;
import org.standwright.design.kit.Saw;
import org.standwright.sheet.PlacedPiece.Parting;

/**
 * Finds the pieces of one material that are to stay together: each group its own pieces, so that groups with labels in
 * common are shared out by trial.
 */
final class TogetherVerifier {
    /** One piece of the material on one of its boards. */
    private record Spot(int sheet, PlacedPiece piece) {
        boolean is(String label) {
            return piece.parting() == Parting.NONE && piece.label().equals(label);
        }
    }

    private final List<Spot> spots = new ArrayList<>();
    private final int sheets;
    private final List<Together> groups;
    private final int leastGap;
    private final int mostGap;
    private final Set<Spot> used = new HashSet<>();
    private int furthest;

    private TogetherVerifier(List<PlannedSheet> sheets, List<Together> groups, Saw saw) {
        this.sheets = sheets.size();
        // what may lie anywhere on a board comes last
        this.groups = groups.stream()
                .sorted(Comparator.comparing((Together group) -> group.kind() == Kind.ONE_SHEET))
                .toList();
        this.leastGap = SheetUnit.up(saw.kerf());
        int byHand = saw.breakDown()
                .map(hand -> SheetUnit.up(hand.kerf()) + 2 * SheetUnit.up(hand.allowance()))
                .orElse(0);
        this.mostGap = Math.max(leastGap, byHand);
        for (int i = 0; i < sheets.size(); i++) {
            for (var piece : sheets.get(i).pieces()) {
                spots.add(new Spot(i, piece));
            }
        }
    }

    /**
     * The first group that finds no place, with all before it in theirs.
     *
     * @param groups those of this material
     */
    static List<String> faults(List<PlannedSheet> sheets, List<Together> groups, Saw saw) {
        var verifier = new TogetherVerifier(sheets, groups, saw);
        if (verifier.find(0, 0)) {
            return List.of();
        }
        var group = verifier.groups.get(verifier.furthest);
        var place = group.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return List.of("pieces " + group.labels() + " do not come from " + place + ".");
    }

    private static Area around(Area a, Area b) {
        int x = Math.min(a.x(), b.x());
        int y = Math.min(a.y(), b.y());
        return new Area(x, y, Math.max(a.endX(), b.endX()) - x, Math.max(a.endY(), b.endY()) - y);
    }

    /** @param from groups that are equal take their choices in order */
    private boolean find(int index, int from) {
        if (index == groups.size()) {
            return true;
        }
        furthest = Math.max(furthest, index);
        var group = groups.get(index);
        int choices = group.kind() == Kind.ONE_SHEET ? sheets : spots.size();
        for (int choice = from; choice < choices; choice++) {
            var taken = take(group, choice);
            if (!taken.isEmpty()) {
                used.addAll(taken);
                boolean sameNext =
                        index + 1 < groups.size() && groups.get(index + 1).equals(group);
                if (find(index + 1, sameNext ? choice : 0)) {
                    return true;
                }
                taken.forEach(used::remove);
            }
        }
        return false;
    }

    /** The pieces of a choice; none where it does not hold the group. */
    private List<Spot> take(Together group, int choice) {
        return switch (group.kind()) {
            case ONE_STRIP -> strip(group, spots.get(choice));
            case ONE_BLANK -> isBlank(group, spots.get(choice)) ? List.of(spots.get(choice)) : List.of();
            case ONE_SHEET -> sheet(group, choice);
        };
    }

    private boolean isBlank(Together group, Spot spot) {
        var blank = spot.piece();
        return !used.contains(spot)
                && blank.parting() == Parting.LATER
                && sorted(blank.holds().stream().map(PlacedPiece::label).toList())
                        .equals(sorted(group.labels()))
                && leavesOver(blank, SheetUnit.up(group.over()));
    }

    /** Whether so much can be cut off on every edge; where the pieces lie in it is decided when it is parted. */
    private static boolean leavesOver(PlacedPiece blank, int over) {
        var around = blank.holds().stream()
                .map(PlacedPiece::area)
                .reduce(TogetherVerifier::around)
                .orElseThrow();
        return around.length() + 2 * over <= blank.area().length()
                && around.width() + 2 * over <= blank.area().width();
    }

    private static List<String> sorted(List<String> labels) {
        return labels.stream().sorted().toList();
    }

    private List<Spot> sheet(Together group, int sheet) {
        var taken = new ArrayList<Spot>();
        for (var label : group.labels()) {
            spots.stream()
                    .filter(spot -> spot.sheet() == sheet && spot.is(label))
                    .filter(spot -> !used.contains(spot) && !taken.contains(spot))
                    .findFirst()
                    .ifPresent(taken::add);
        }
        return taken.size() == group.labels().size() ? taken : List.of();
    }

    private List<Spot> strip(Together group, Spot first) {
        if (!first.is(group.labels().get(0)) || used.contains(first)) {
            return List.of();
        }
        var taken = new ArrayList<>(List.of(first));
        boolean alongX = (group.along() == Along.LENGTH) != first.piece().turned();
        for (var label : group.labels().subList(1, group.labels().size())) {
            var last = taken.get(taken.size() - 1);
            spots.stream()
                    .filter(spot -> spot.is(label) && !used.contains(spot) && follows(last, spot, alongX))
                    .findFirst()
                    .ifPresent(taken::add);
        }
        return taken.size() == group.labels().size() ? taken : List.of();
    }

    /** Beside it in the strip, the next one on. */
    private boolean follows(Spot last, Spot next, boolean alongX) {
        var a = last.piece().area();
        var b = next.piece().area();
        int gap = alongX ? b.x() - a.endX() : b.y() - a.endY();
        return next.sheet() == last.sheet()
                && next.piece().turned() == last.piece().turned()
                && gap >= leastGap
                && gap <= mostGap
                && (alongX ? a.y() == b.y() : a.x() == b.x());
    }
}
