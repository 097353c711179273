package org.standwright.router.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.standwright.cutlist.CutLine;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Grain;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.Stock;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.job.PieceType.Ways;
import org.standwright.sheet.plan.ImpossiblePlanException;

/** Whether each piece can come from some board with the bit's way round it. */
record RouterLimits(Stock stock, Router router) {
    private static final String SHEETS = "/stock/sheets";

    /** By how much a piece is too long and too wide for a board as it lies, mm. */
    private record Excess(StockSheet sheet, double length, double width) {
        double sum() {
            return length + width;
        }
    }

    /** The boards of a material that anything can be routed from. */
    List<StockSheet> large(List<CutLine> lines, Map<String, Blank> blanks) {
        var material = lines.get(0).material();
        var sheets = stock.of(material);
        if (sheets.isEmpty()) {
            throw new ImpossiblePlanException(
                    SHEETS,
                    "stock holds no sheet of '" + material.name() + "', but the cut list needs it.",
                    List.of("Add its length and width to the stock."));
        }
        var large = sheets.stream()
                .filter(sheet ->
                        Math.min(sheet.length(), sheet.width()) > 2 * router.spacing() + 1.0 / SheetUnit.PER_MM)
                .toList();
        if (large.isEmpty()) {
            var blank = blanks.get(lines.get(0).label());
            throw tooLarge(
                    "cut line '" + lines.get(0).label() + "' ("
                            + lines.get(0).part().name() + ")",
                    blank.around().width(),
                    blank.around().height(),
                    Ways.STRAIGHT,
                    sheets,
                    lines.get(0).part().name());
        }
        return large;
    }

    /** @throws ImpossiblePlanException when a piece fits nowhere */
    void check(RouterWork work) {
        for (int type = 0; type < work.kits().size(); type++) {
            check(work, work.kits().get(type), work.job().types().get(type));
        }
    }

    private void check(RouterWork work, Kit kit, PieceType type) {
        var kinds = work.job().kinds();
        if (kinds.stream().anyMatch(type::fits)) {
            return;
        }
        var what = kit.members().size() == 1
                ? "cut line '" + kit.label() + "' (" + kit.names() + ")"
                : "'" + kit.label() + "' cut as one block (" + kit.names() + ")";
        boolean large = kinds.stream()
                .anyMatch(
                        kind -> type.fits(new BoardKind(kind.length(), kind.width(), kind.count(), kind.cost(), true)));
        if (large) {
            throw ImpossiblePlanException.notMating(what, work.sheets(), stock.fit());
        }
        int spacing = work.job().rules().kerf();
        throw tooLarge(
                what,
                SheetUnit.mm(type.length() - spacing),
                SheetUnit.mm(type.width() - spacing),
                type.ways(),
                work.sheets(),
                kit.names());
    }

    private ImpossiblePlanException tooLarge(
            String what, double length, double width, Ways ways, List<StockSheet> sheets, String names) {
        var excess = sheets.stream()
                .flatMap(sheet -> excesses(sheet, length, width, ways).stream())
                .min(Comparator.comparingDouble(Excess::sum))
                .orElseThrow();
        var sheet = excess.sheet();
        double around = 2 * router.spacing();
        boolean turnedFits = ways == Ways.STRAIGHT
                && sheet.material().grain() != Grain.NONE
                && sheets.stream().anyMatch(one -> width + around <= one.length() && length + around <= one.width());
        return new ImpossiblePlanException(
                SHEETS,
                String.format(
                        Locale.ROOT,
                        "%s is %s, and with bit and margin of %.2f mm all round needs %s, but a sheet of '%s' is %s:"
                                + " %.2f mm too short and %.2f mm too narrow.",
                        what,
                        size(length, width),
                        router.spacing(),
                        size(length + around, width + around),
                        sheet.name(),
                        size(sheet.length(), sheet.width()),
                        excess.length(),
                        excess.width()),
                waysOut(excess, turnedFits ? Optional.of(names) : Optional.empty()));
    }

    /** @param turned names of the parts, where only their grain stands against it */
    private List<String> waysOut(Excess excess, Optional<String> turned) {
        var ways = new ArrayList<String>();
        double most = Math.max(excess.length(), excess.width());
        if (most < 2 * router.spacing()) {
            ways.add(String.format(
                    Locale.ROOT,
                    "Use a smaller bit or margin: %.2f mm together would do.",
                    router.spacing() - most / 2));
        }
        turned.ifPresent(names -> ways.add(
                "It would fit turned: let its grain run either way (\"anyGrain\" of \"cutting\": " + names + ")."));
        var sheet = excess.sheet();
        ways.add("Make it smaller, keep fewer together, or buy a sheet of at least "
                + size(sheet.length() + excess.length(), sheet.width() + excess.width()) + ".");
        return ways;
    }

    private List<Excess> excesses(StockSheet sheet, double length, double width, Ways ways) {
        double around = 2 * router.spacing();
        var straight = new Excess(
                sheet, Math.max(0, length + around - sheet.length()), Math.max(0, width + around - sheet.width()));
        var turned = new Excess(
                sheet, Math.max(0, width + around - sheet.length()), Math.max(0, length + around - sheet.width()));
        return ways == Ways.EITHER ? List.of(straight, turned) : List.of(straight);
    }

    /** @param missing area of the pieces without a place, enlarged by the spacing, units² */
    static ImpossiblePlanException scarce(RouterWork work, double missing) {
        var largest = work.sheets().stream()
                .max(Comparator.comparingDouble(sheet -> sheet.length() * sheet.width()))
                .orElseThrow();
        double area = SheetUnit.squareMetres(missing);
        long more = (long) Math.ceil(area / (largest.length() * largest.width() * 1e-6));
        return new ImpossiblePlanException(
                SHEETS,
                String.format(
                        Locale.ROOT,
                        "no way was found to lay all pieces on the boards of '%s' that are there: pieces of %.2f m² with"
                                + " the bit's way round them found no place.",
                        largest.material().name(),
                        area),
                List.of("Have at least " + more + " more of '" + largest.name() + "', or leave out its count."));
    }

    private static String size(double length, double width) {
        return String.format(Locale.ROOT, "%.2f x %.2f mm", length, width);
    }
}
