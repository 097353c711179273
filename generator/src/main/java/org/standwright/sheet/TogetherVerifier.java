package org.standwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.standwright.cutlist.Together;
import org.standwright.cutlist.Together.Along;
import org.standwright.cutlist.Together.Kind;
import org.standwright.design.kit.Saw;
import org.standwright.sheet.PlacedPiece.Parting;

/** Whether the pieces of one material stay together where they are to, see {@link GroupFinder}. */
final class TogetherVerifier implements GroupFinder.Choices<TogetherVerifier.Spot> {
    /** One piece of the material on one of its boards. */
    record Spot(int sheet, PlacedPiece piece) {
        boolean is(String label) {
            return piece.parting() == Parting.NONE && piece.label().equals(label);
        }
    }

    private final List<Spot> spots = new ArrayList<>();
    private final int sheets;
    private final int leastGap;
    private final int mostGap;

    private TogetherVerifier(List<PlannedSheet> sheets, Saw saw) {
        this.sheets = sheets.size();
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
        var verifier = new TogetherVerifier(sheets, saw);
        return GroupFinder.homeless(groups, verifier).stream()
                .map(TogetherVerifier::fault)
                .toList();
    }

    private static String fault(Together group) {
        var place = group.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return "pieces " + group.labels() + " do not come from " + place + ".";
    }

    private static Area around(Area a, Area b) {
        int x = Math.min(a.x(), b.x());
        int y = Math.min(a.y(), b.y());
        return new Area(x, y, Math.max(a.endX(), b.endX()) - x, Math.max(a.endY(), b.endY()) - y);
    }

    @Override
    public int count(Together group) {
        return group.kind() == Kind.ONE_SHEET ? sheets : spots.size();
    }

    @Override
    public List<Spot> take(Together group, int choice, Set<Spot> used) {
        return switch (group.kind()) {
            case ONE_STRIP -> strip(group, spots.get(choice), used);
            case ONE_BLANK -> isBlank(group, spots.get(choice), used) ? List.of(spots.get(choice)) : List.of();
            case ONE_SHEET -> sheet(group, choice, used);
        };
    }

    private boolean isBlank(Together group, Spot spot, Set<Spot> used) {
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

    private List<Spot> sheet(Together group, int sheet, Set<Spot> used) {
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

    private List<Spot> strip(Together group, Spot first, Set<Spot> used) {
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
