package org.standwright.router.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.Cutting;
import org.standwright.cutlist.Together;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.router.plan.Pairing.Beside;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.Stock;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.plan.ImpossiblePlanException;
import org.standwright.sheet.plan.Work;

/**
 * One material's share of a job: what stands behind the numbers that the search sees.
 *
 * @param kits by index of their type in the job
 * @param sheets by index of their kind in the job
 * @param spacing mm, rounded up to the planner's unit
 */
record RouterWork(List<Kit> kits, List<StockSheet> sheets, PackingJob job, double spacing) {
    RouterWork {
        kits = List.copyOf(kits);
        sheets = List.copyOf(sheets);
    }

    /**
     * Every piece as its rectangle: the job of a saw as wide as the spacing that leaves as much along each edge, but
     * that parts no strips with its blade tilted.
     *
     * @param lines all of one material
     * @throws ImpossiblePlanException when no plan can do it
     */
    static RouterWork of(Stock stock, List<CutLine> lines, Cutting cutting, Router router) {
        var limits = new RouterLimits(stock, router);
        double spacing = SheetUnit.mm(SheetUnit.up(router.spacing()));
        var blanks = blanks(lines, cutting);
        var boards = limits.large(lines, blanks);
        var plain = lines.stream().map(line -> blanks.get(line.label()).plain()).toList();
        var work = Work.unchecked(
                new Stock(boards, new Saw(spacing, spacing), stock.keep(), stock.fit()), plain, asked(cutting));
        var kits = work.blocks().stream().map(block -> Kit.of(block, blanks)).toList();
        var routed = new RouterWork(kits, work.sheets(), work.job(), spacing);
        limits.check(routed);
        return routed;
    }

    /** This, and what comes of it where equal parts are laid in pairs. */
    List<RouterWork> ways() {
        var pairs = Stream.of(Beside.values()).flatMap(beside -> paired(beside).stream());
        return Stream.concat(Stream.of(this), pairs).toList();
    }

    /** With equal parts in pairs where that saves; empty where none does. */
    private Optional<RouterWork> paired(Beside beside) {
        var paired = new ArrayList<Kit>();
        var types = new ArrayList<PieceType>();
        for (int i = 0; i < kits.size(); i++) {
            var single = kits.get(i);
            var type = job.types().get(i);
            var pair = type.count() < 2
                    ? Optional.<Kit>empty()
                    : Pairing.of(single, spacing, beside).filter(kit -> isOnSomeBoard(kit.type(1, type.ways())));
            int left = pair.isPresent() ? type.count() % 2 : type.count();
            pair.ifPresent(kit -> {
                paired.add(kit);
                types.add(kit.type(type.count() / 2, type.ways()));
            });
            if (left > 0) {
                paired.add(single);
                types.add(single.type(left, type.ways()));
            }
        }
        return paired.stream().allMatch(kits::contains)
                ? Optional.empty()
                : Optional.of(new RouterWork(paired, sheets, new PackingJob(types, job.kinds(), job.rules()), spacing));
    }

    private boolean isOnSomeBoard(PieceType type) {
        return job.kinds().stream().anyMatch(type::fits);
    }

    private static Map<String, Blank> blanks(List<CutLine> lines, Cutting cutting) {
        var together = asked(cutting).together().stream()
                .flatMap(group -> group.labels().stream())
                .collect(Collectors.toSet());
        var blanks = new LinkedHashMap<String, Blank>();
        for (var line : lines) {
            blanks.put(line.label(), together.contains(line.label()) ? Blank.rough(line) : Blank.least(line));
        }
        return blanks;
    }

    /** Without blanks that are large enough to be held: a router's pieces are held by their sheet. */
    private static Cutting asked(Cutting cutting) {
        var together = cutting.together().stream()
                .filter(group -> group.kind() != Together.Kind.ONE_BLANK)
                .toList();
        return new Cutting(cutting.later(), cutting.free(), cutting.mating(), together);
    }
}
