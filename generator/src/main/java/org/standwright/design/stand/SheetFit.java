package org.standwright.design.stand;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.Hang;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.PlanChange;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.kit.Size2;
import org.standwright.design.kit.StockSheet;
import org.standwright.geom.Grid;
import org.standwright.part.Part;
import org.standwright.part.SheetGood;

/** Every part must come out of one board of its material. */
public final class SheetFit {
    private SheetFit() {}

    /**
     * Each part within a sheet of its own material.
     *
     * @param least the smallest plan
     */
    static void check(StandDesign design, List<Group> groups, Size2 least) {
        var all = groups.stream().flatMap(group -> group.parts().stream()).toList();
        for (var placed : all) {
            var part = placed.part();
            if (part.material().isBar()) {
                onBar(design, placed.label(), part);
            } else {
                fits(design, placed, all, least);
            }
        }
    }

    /** The only bars in a design are what its drawers run on. */
    private static void onBar(StandDesign design, String label, Part part) {
        if (design.drawers().hang() instanceof Hang.Runners runners
                && Grid.less(runners.bar().length(), part.roughLength())) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/drawers/hang/bar",
                    "Part '" + label + "' is cut " + units.length(part.roughLength()) + " long, but a "
                            + runners.bar().name() + " is "
                            + units.length(runners.bar().length()) + " long.",
                    List.of("Use a bar " + Exact.up(units, part.roughLength())
                            + " long or more, or make the plan less deep."));
        }
    }

    /** One board of a material: two that differ only in size or price could not be told apart in the shop. */
    static void oneBoardEach(StandDesign design) {
        var named = new LinkedHashMap<String, SheetGood>();
        named.put("/carcass/sheet", design.carcass().sheet());
        named.put("/carcass/back", design.carcass().back());
        named.put("/worktop/sheet", design.worktop().sheet());
        named.put("/drawers/box", design.drawers().box());
        named.put("/drawers/bottom", design.drawers().bottom());
        named.put("/drawers/front", design.drawers().front());
        named.forEach((field, sheet) -> named.values().stream()
                .filter(other -> other.material().equals(sheet.material()) && !other.equals(sheet))
                .findFirst()
                .ifPresent(other -> {
                    throw new ImpossibleDesignException(
                            field,
                            "Its board has the name of another one in this design, "
                                    + sheet.material().name() + ", but not its size, price or nominal thickness.",
                            List.of("Name the same board everywhere, or give this one a name of its own."));
                }));
    }

    private static void fits(StandDesign design, PlacedPart placed, List<PlacedPart> all, Size2 least) {
        var part = placed.part();
        var boards = new BoardChoice(design, part.material());
        if (boards.fit(part)) {
            return;
        }
        var change = smaller(design, placed, boards.nearest(part), all, least);
        var alike = all.stream()
                .map(PlacedPart::part)
                .filter(other -> other.material().equals(part.material()))
                .toList();
        double length = alike.stream().mapToDouble(Part::roughLength).max().orElseThrow();
        double width = alike.stream().mapToDouble(Part::roughWidth).max().orElseThrow();
        var ways = new ArrayList<String>();
        ways.add(change.map(way -> "Make " + way.words()).orElse("Make the plan smaller") + ".");
        ways.add("Or use a sheet " + boards.leastSheet(length, width) + " or more.");
        if (boards.fitTurned(part)) {
            ways.add("Or let its grain run either way: name '" + part.name() + "' in \"anyGrain\" of \"cutting\".");
        }
        throw new ImpossibleDesignException(
                change.map(PlanChange::field).orElse("/plan"),
                "Part '" + placed.label() + "' is cut " + boards.tooLarge(part) + ".",
                ways);
    }

    /** A plan in which parts fit their sheets, where this one lies along its width or depth and grows with it. */
    private static Optional<PlanChange> smaller(
            StandDesign design, PlacedPart placed, StockSheet sheet, List<PlacedPart> all, Size2 least) {
        var trim = design.saw().trim();
        boolean tooLong =
                Grid.less(sheet.length() - trim.offLength(), placed.part().roughLength());
        boolean tooWide =
                Grid.less(sheet.width() - trim.offWidth(), placed.part().roughWidth());
        var axis = tooLong ? placed.placement().along() : placed.placement().across();
        var plan = PlanSize.of(design);
        if (tooLong && tooWide || axis.unit().z() != 0) {
            return Optional.empty();
        }
        boolean across = axis.unit().x() != 0;
        if (across && !reachesThrough(design, placed)) {
            return Optional.empty();
        }
        double missing = all.stream()
                .filter(other -> !across || reachesThrough(design, other))
                .mapToDouble(other -> excess(design, other, across))
                .max()
                .orElseThrow();
        double then = down(design, (across ? plan.width() : plan.depth()) - missing);
        if (Grid.less(then, across ? least.width() : least.depth())) {
            return Optional.empty();
        }
        return Optional.of(across ? PlanChange.width(design, then) : PlanChange.depth(design, then));
    }

    /** From one side of the carcass to the other. */
    private static boolean reachesThrough(StandDesign design, PlacedPart placed) {
        double inside = PlanSize.of(design).width()
                - 2 * design.carcass().sheet().material().thickness();
        var box = placed.box();
        return !Grid.less(box.max().x() - box.min().x(), inside);
    }

    /** How much larger than its board a part is across the width or along the depth of the carcass. */
    private static double excess(StandDesign design, PlacedPart placed, boolean across) {
        var part = placed.part();
        var boards = new BoardChoice(design, part.material());
        if (part.material().isBar() || boards.fit(part)) {
            return 0;
        }
        var along = placed.placement().along().unit();
        var square = placed.placement().across().unit();
        var trim = design.saw().trim();
        var nearest = boards.nearest(part);
        double length = part.roughLength() - nearest.length() + trim.offLength();
        double width = part.roughWidth() - nearest.width() + trim.offWidth();
        return Math.max(
                (across ? along.x() : along.y()) == 0 ? 0 : length,
                (across ? square.x() : square.y()) == 0 ? 0 : width);
    }

    private static double down(StandDesign design, double mm) {
        return Exact.onTapeDown(design.unit(), mm);
    }
}
