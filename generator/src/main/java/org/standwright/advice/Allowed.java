package org.standwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.advice.SizeChange.Dimension;
import org.standwright.design.Savings;
import org.standwright.design.StandDesign;
import org.standwright.part.Grain;
import org.standwright.unit.Units;

/** What a design says may change, as changes to try. */
final class Allowed {
    /** The step by which a maker changes a size: 5 mm or 1/4 in. */
    private static final double STEP_MM = 5;

    private static final double STEP_INCH = 25.4 / 4;

    private final StandDesign design;
    private final Savings savings;

    Allowed(StandDesign design, Savings savings) {
        this.design = design;
        this.savings = savings;
    }

    /** In a fixed order: boards, looks, sizes, drawers. */
    List<Line> lines() {
        var lines = new ArrayList<Line>();
        savings.sheets().stream()
                .map(other -> new SheetSwap(other.instead().material().name(), other.sheet()))
                .filter(swap -> uses(swap.instead()))
                .forEach(swap -> lines.add(Line.of(List.of(swap))));
        if (savings.backInTwo() && design.carcass().backPieces() == 1) {
            lines.add(Line.of(List.of(new SplitBack())));
        }
        grained().forEach(name -> lines.add(Line.of(List.of(new FreedGrain(name)))));
        sizes(lines, Dimension.DEPTH, savings.depth());
        sizes(lines, Dimension.WIDTH, savings.width());
        sizes(lines, Dimension.WORKING_HEIGHT, savings.workingHeight());
        drawers(lines);
        return lines;
    }

    /** Names of boards that may be changed, but of which nothing is made. */
    List<String> unused() {
        var names = new ArrayList<String>();
        savings.sheets().forEach(other -> names.add(other.instead().material().name()));
        savings.freeGrain().forEach(sheet -> names.add(sheet.material().name()));
        return names.stream().distinct().filter(name -> !uses(name)).toList();
    }

    private boolean uses(String name) {
        return design.sheets().stream()
                .anyMatch(sheet -> sheet.material().name().equals(name));
    }

    private List<String> grained() {
        var freed = savings.freeGrain().stream()
                .map(sheet -> sheet.material().name())
                .distinct()
                .toList();
        return freed.stream()
                .filter(name -> design.sheets().stream()
                        .map(sheet -> sheet.material())
                        .anyMatch(material -> material.name().equals(name) && material.grain() == Grain.ALONG_LENGTH))
                .toList();
    }

    private void sizes(List<Line> lines, Dimension dimension, Savings.Give give) {
        sizes(lines, dimension, -1, give.less());
        sizes(lines, dimension, 1, give.more());
    }

    private void sizes(List<Line> lines, Dimension dimension, int sign, double most) {
        if (most > 0) {
            double step = design.unit() == Units.MM ? STEP_MM : STEP_INCH;
            lines.add(new Line(
                    changes(dimension, sign, most, step),
                    changes(dimension, sign, most, design.unit().tapeStep())));
        }
    }

    /** Step by step, and all that is allowed as the last. */
    private static List<SizeChange> changes(Dimension dimension, int sign, double most, double step) {
        int whole = (int) StrictMath.ceil(most / step - 1e-9) - 1;
        return IntStream.rangeClosed(1, whole + 1)
                .mapToObj(i -> new SizeChange(dimension, sign * Math.min(i * step, most), most))
                .toList();
    }

    private void drawers(List<Line> lines) {
        for (var place : FewerDrawers.places(design, 2)) {
            var steps = IntStream.rangeClosed(1, savings.fewerDrawers())
                    .filter(by -> FewerDrawers.places(design, by + 1).contains(place))
                    .mapToObj(by -> new FewerDrawers(place, by))
                    .toList();
            if (!steps.isEmpty()) {
                lines.add(Line.of(steps));
            }
        }
    }
}
