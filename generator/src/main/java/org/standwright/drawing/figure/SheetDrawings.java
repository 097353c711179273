package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Paper;
import org.standwright.drawing.Point;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.SheetPlan;
import org.standwright.unit.Units;

/** Every board of a sheet plan on a sheet of paper of its own, laid sideways. */
public final class SheetDrawings {
    private static final double MARGIN = 10;
    private static final double HEAD = 12;

    private SheetDrawings() {}

    /** One drawing a board, material by material in the order of the plan. */
    public static List<Drawing> of(SheetPlan plan, Units units, TextMeasure measure) {
        var drawings = new ArrayList<Drawing>();
        for (var material : plan.materials()) {
            for (int i = 0; i < material.sheets().size(); i++) {
                drawings.add(board(plan, material, i, units, measure));
            }
        }
        return List.copyOf(drawings);
    }

    private static Drawing board(SheetPlan plan, MaterialPlan material, int index, Units units, TextMeasure measure) {
        var paper = Paper.of(units);
        double width = paper.height();
        double height = paper.width();
        var figure = SheetFigure.of(
                material.sheet(),
                plan.saw(),
                material.sheets().get(index),
                units,
                width - 2 * MARGIN,
                height - 2 * MARGIN - HEAD,
                measure);
        var title = String.format(
                Locale.ROOT,
                "%s, sheet %d of %d",
                material.sheet().material().name(),
                index + 1,
                material.sheets().size());
        var head = new Point(MARGIN, height - MARGIN - Letters.HEADING);
        return new Drawing(
                title,
                width,
                height,
                List.of(
                        Text.level(title, head, Letters.HEADING, Text.Anchor.START)
                                .bold(),
                        figure.at((width - figure.width()) / 2, height - MARGIN - HEAD - figure.height())));
    }
}
