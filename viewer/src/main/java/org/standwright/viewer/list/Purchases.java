package org.standwright.viewer.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.EdgingRun;
import org.standwright.cutlist.HardwareLine;
import org.standwright.packet.words.BarsToBuy;
import org.standwright.packet.words.BoardWords;
import org.standwright.packet.words.Counted;
import org.standwright.packet.words.ProofWords;
import org.standwright.packet.words.SheetCount;
import org.standwright.unit.Money;
import org.standwright.unit.Units;
import org.standwright.viewer.list.Purchase.Kind;
import org.standwright.viewer.list.Purchase.Source;
import org.standwright.viewer.work.Job;

/**
 * Everything that a job takes, and what it comes to.
 *
 * @param sentences how many boards and bars it takes at least, material by material
 */
record Purchases(List<Purchase> all, List<String> sentences) {
    Purchases {
        all = List.copyOf(all);
        sentences = List.copyOf(sentences);
    }

    /** Plans bars too, which may take a while. */
    static Purchases of(Job job) {
        var units = job.furniture().design().unit();
        var bars = BarsToBuy.of(job.furniture().design(), job.cutList());
        var all = new ArrayList<Purchase>();
        var sentences = new ArrayList<String>();
        for (var material : job.plan().materials()) {
            SheetCount.of(material).forEach(count -> all.add(board(count, units)));
            sentences.add(material.material().name() + ": " + ProofWords.of(material, units) + ".");
        }
        for (var bar : bars) {
            var plan = bar.barPlan();
            all.add(bar(bar, plan.map(found -> found.bars().size()), units));
            plan.ifPresent(found -> sentences.add(bar.run().section().name() + ": "
                    + Counted.of(found.bars().size(), "bar") + "; " + ProofWords.ofBars(found.proof()) + "."));
        }
        var edgings = job.cutList().edgings();
        edgings.forEach(run -> all.add(edging(run, units)));
        hardware(job.cutList(), edgings).forEach(line -> all.add(hardware(line)));
        return new Purchases(all, sentences);
    }

    private static Purchase board(SheetCount count, Units units) {
        var from = count.from();
        return new Purchase(
                Kind.BOARD,
                String.valueOf(count.sheets()),
                count.sheets(),
                BoardWords.name(from),
                units.bareLength(from.length()) + " × " + units.bareLength(from.width()) + " × "
                        + units.length(from.thickness()),
                from.isBought() ? Source.TO_BUY : Source.AT_HAND,
                from.price());
    }

    /** So many bars, or a length where that of a bar is not known. */
    private static Purchase bar(BarsToBuy bars, Optional<Integer> count, Units units) {
        var section = units.bareLength(bars.width()) + " × "
                + units.length(bars.run().section().thickness());
        return new Purchase(
                Kind.BAR,
                count.map(String::valueOf).orElseGet(() -> units.run(bars.length())),
                count.map(Integer::doubleValue).orElse(bars.length()),
                bars.run().section().name(),
                section
                        + bars.bar()
                                .map(bar -> ", " + units.length(bar.length()) + " long")
                                .orElse(""),
                Source.TO_BUY,
                count.flatMap(known -> bars.bar()).flatMap(bar -> bar.price()));
    }

    private static Purchase edging(EdgingRun run, Units units) {
        return new Purchase(
                Kind.EDGING,
                units.run(run.toBuy()),
                run.toBuy(),
                run.banding().name(),
                units.run(run.length()) + " of edges, the rest for their ends",
                Source.TO_BUY,
                Optional.empty());
    }

    /** Edgings stand among the hardware too; here they are said once. */
    private static Stream<HardwareLine> hardware(CutList list, List<EdgingRun> edgings) {
        return list.hardware().stream()
                .filter(line -> edgings.stream()
                        .noneMatch(run -> line.item().startsWith(run.banding().name() + ": ")));
    }

    private static Purchase hardware(HardwareLine line) {
        return new Purchase(
                Kind.HARDWARE,
                String.valueOf(line.count()),
                line.count(),
                line.item(),
                "",
                Source.TO_BUY,
                Optional.empty());
    }

    /** One sum a currency, by its letters, of what has a price. */
    List<Money> sums() {
        var sums = new TreeMap<String, Money>();
        all.stream()
                .flatMap(each -> each.together().stream())
                .forEach(price -> sums.merge(price.currency(), price, Money::plus));
        return List.copyOf(sums.values());
    }

    /** 'Known prices come to 124.00 EUR. Without a price: 2 × birch 18, edging, hardware.' */
    String total() {
        var sums = sums().stream().map(Money::toString).collect(Collectors.joining(" and "));
        var unpriced = unpriced();
        return (sums.isEmpty() ? "No price is given." : "Known prices come to " + sums + ".")
                + (unpriced.isEmpty() ? "" : " Without a price: " + unpriced + ".");
    }

    private String unpriced() {
        var words = new ArrayList<String>();
        all.stream()
                .filter(Purchase::isUnpriced)
                .filter(each -> each.kind() == Kind.BOARD || each.kind() == Kind.BAR)
                .forEach(each -> words.add(each.count() + " × " + each.what()));
        Stream.of(Kind.EDGING, Kind.HARDWARE)
                .filter(kind -> all.stream().anyMatch(each -> each.kind() == kind && each.isUnpriced()))
                .forEach(kind -> words.add(kind.word()));
        return String.join(", ", words);
    }
}
