package org.standwright.make;

import java.util.ArrayList;
import java.util.List;
import org.standwright.cutlist.CutList;
import org.standwright.design.built.Furniture;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Point;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.SheetFigure;
import org.standwright.drawing.figure.SheetKey;
import org.standwright.geom.Rect;
import org.standwright.packet.words.BoardWords;
import org.standwright.packet.words.SecondStage;
import org.standwright.packet.words.TrimWords;
import org.standwright.sheet.Area;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.SheetUnit;

/**
 * One sheet of a plan on a paper of its own.
 *
 * @param index of the sheet in its material's plan, from 0 on
 * @param corner where the board's lower left corner lies on the paper, mm of paper
 * @param times how many times smaller than life the board is drawn
 */
public record SheetPaper(MaterialPlan material, int index, Drawing drawing, Point corner, double times) {
    /** Room for one sheet's figure, mm, and the white around it. */
    private static final double WIDTH = 277;

    private static final double HEIGHT = 190;
    private static final double MARGIN = 10;

    /** Every sheet, material by material. */
    public static List<SheetPaper> of(Furniture furniture, CutList cutList, SheetPlan plan) {
        var papers = new ArrayList<SheetPaper>();
        for (var material : plan.materials()) {
            for (int i = 0; i < material.sheets().size(); i++) {
                papers.add(of(furniture, cutList, plan, material, i));
            }
        }
        return papers;
    }

    static SheetPaper of(Furniture furniture, CutList cutList, SheetPlan plan, MaterialPlan material, int index) {
        var measure = TextMeasure.shipped();
        var sheet = material.sheets().get(index);
        var later = SecondStage.of(furniture).labels(cutList);
        var title = title(furniture, plan, material, index);
        var board = new SheetFigure(plan.saw(), later, furniture.design().unit(), measure).board(sheet, WIDTH, HEIGHT);
        var figure =
                board.figure().titled(title, WIDTH / 2, measure).over(SheetKey.of(List.of(sheet), measure), measure);
        var placed = figure.at(MARGIN, MARGIN);
        var drawing = new Drawing(title, figure.width() + 2 * MARGIN, figure.height() + 2 * MARGIN, List.of(placed));
        return new SheetPaper(
                material, index, drawing, placed.shift(), board.scale().times());
    }

    /** What it is and for which saw: 'Planer stand: birch 18, sheet 1 of 2, kerf 3.2 mm, trim 5 mm'. */
    private static String title(Furniture furniture, SheetPlan plan, MaterialPlan material, int index) {
        var units = furniture.design().unit();
        var saw = plan.saw();
        return furniture.design().name() + ": " + BoardWords.of(material, index, units) + ", kerf "
                + units.length(saw.kerf()) + ", " + TrimWords.of(saw.trim(), units);
    }

    public PlannedSheet sheet() {
        return material.sheets().get(index);
    }

    /** Where a rectangle of the board lies on the paper, mm of paper. */
    public Rect onPaper(Area area) {
        return new Rect(
                corner.x() + SheetUnit.mm(area.x()) / times,
                corner.y() + SheetUnit.mm(area.y()) / times,
                corner.x() + SheetUnit.mm(area.endX()) / times,
                corner.y() + SheetUnit.mm(area.endY()) / times);
    }

    /** What lies on the board at a point of the paper, mm of the board from its lower left corner. */
    public Point onBoard(Point paper) {
        return new Point((paper.x() - corner.x()) * times, (paper.y() - corner.y()) * times);
    }
}
