package org.standwright.router.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.design.kit.Router;
import org.standwright.part.Material;
import org.standwright.router.RoutedPiece;
import org.standwright.router.RoutedSheet;
import org.standwright.router.RouterPlan;
import org.standwright.router.RouterPlan.MaterialSheets;
import org.standwright.router.RouterVerifier;
import org.standwright.router.plan.places.FilledBoard;
import org.standwright.router.plan.places.Filling;
import org.standwright.router.plan.places.PlaceSearch;
import org.standwright.router.plan.places.ScarceBoardsException;
import org.standwright.sheet.Stock;
import org.standwright.sheet.bound.LowerBound;
import org.standwright.sheet.plan.Effort;
import org.standwright.sheet.plan.ImpossiblePlanException;

/**
 * Lays a cut list on boards for a router, which goes round any part at any place: with as little cost as it finds, then
 * with the largest rest. The same cut list and stock give the same plan, and no plan leaves here that {@link
 * RouterVerifier} finds fault with.
 */
public final class RouterPlanner {
    private RouterPlanner() {}

    /** With the usual effort. */
    public static RouterPlan plan(Stock stock, CutList cutList, Router router) {
        return plan(stock, cutList, router, Effort.USUAL, () -> false);
    }

    /**
     * Boards for each sheet material, in the order of the cut list, as long as somebody wants it.
     *
     * @param givenUp asked now and then
     * @throws ImpossiblePlanException if no plan can do it
     * @throws IllegalArgumentException if two lines have one label
     * @throws java.util.concurrent.CancellationException once it was given up
     */
    public static RouterPlan plan(Stock stock, CutList cutList, Router router, Effort effort, BooleanSupplier givenUp) {
        requireOwnLabels(cutList);
        var materials = new ArrayList<MaterialSheets>();
        linesByMaterial(cutList).forEach((material, lines) -> {
            var work = RouterWork.of(stock, lines, cutList.cutting(), router);
            materials.add(new MaterialSheets(material, sheets(work, filling(work, effort, givenUp))));
        });
        var plan = new RouterPlan(router, materials);
        var faults = RouterVerifier.faults(stock, cutList, router, plan);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the router plan cannot be cut as drawn: " + String.join(" ", faults));
        }
        return plan;
    }

    private static Filling filling(RouterWork work, Effort effort, BooleanSupplier givenUp) {
        // of the seconds, half for each of both searches
        double seconds = effort.seconds() / 2;
        var sawn = new Effort(effort.rounds(), 0, seconds, effort.isRepeatable());
        var free = new Effort(effort.rounds(), effort.offcutRounds(), seconds, effort.isRepeatable());
        long bound = LowerBound.of(work.job());
        var first = SawnFirst.of(work.job(), bound, sawn.budget(givenUp));
        try {
            return PlaceSearch.run(work.job(), first, bound, free.budget(givenUp));
        } catch (ScarceBoardsException e) {
            throw RouterLimits.scarce(work, e.missingArea());
        }
    }

    /** In the order of the stock, the fullest first. */
    private static List<RoutedSheet> sheets(RouterWork work, Filling filling) {
        return filling.boards().stream()
                .sorted(Comparator.comparingInt(FilledBoard::kind).thenComparingLong(FilledBoard::rest))
                .map(board -> new RoutedSheet(
                        work.sheets().get(board.kind()),
                        board.places().stream()
                                .flatMap(place -> pieces(work, place.type(), place.x(), place.y(), place.turned()))
                                .sorted(Comparator.comparingDouble((RoutedPiece piece) ->
                                                piece.outline().bounds().y0())
                                        .thenComparingDouble(piece ->
                                                piece.outline().bounds().x0()))
                                .toList()))
                .toList();
    }

    private static Stream<RoutedPiece> pieces(RouterWork work, int type, int x, int y, boolean turned) {
        return work.kits().get(type).at(x, y, turned, work.spacing()).stream();
    }

    private static Map<Material, List<CutLine>> linesByMaterial(CutList cutList) {
        var lines = new LinkedHashMap<Material, List<CutLine>>();
        for (var line : cutList.sheetLines()) {
            if (line.count() > 0) {
                lines.computeIfAbsent(line.material(), none -> new ArrayList<>())
                        .add(line);
            }
        }
        return lines;
    }

    private static void requireOwnLabels(CutList cutList) {
        var seen = new HashSet<String>();
        for (var line : cutList.lines()) {
            if (!seen.add(line.label())) {
                throw new IllegalArgumentException(
                        "two lines of the cut list are labelled '" + line.label() + "'; give each its own label.");
            }
        }
    }
}
