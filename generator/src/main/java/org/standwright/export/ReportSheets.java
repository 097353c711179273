package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;
import org.standwright.sheet.Cut;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.SheetPlan;
import org.standwright.unit.Money;

/** The report's part of a sheet plan, and of the boards it is cut from. */
final class ReportSheets {
    private ReportSheets() {}

    static ObjectNode plan(SheetPlan plan) {
        var node = JsonShapes.object()
                .put("kerf", plan.saw().kerf())
                .put("trim", plan.saw().trim().left());
        node.set(
                "prices",
                JsonShapes.words(plan.prices().stream().map(Money::toString).toList()));
        node.set("materials", JsonShapes.list(plan.materials(), ReportSheets::material));
        return node;
    }

    static ObjectNode good(SheetGood sheet) {
        var node = material(sheet.material());
        node.put("sheetLength", sheet.length()).put("sheetWidth", sheet.width());
        sheet.price().ifPresent(price -> node.put("price", price.toString()));
        sheet.nominal().ifPresent(nominal -> node.put("nominalThickness", nominal.thickness()));
        return node;
    }

    private static ObjectNode material(Material material) {
        return JsonShapes.object()
                .put("name", material.name())
                .put("thickness", material.thickness())
                .put("density", material.density())
                .put("grain", JsonShapes.word(material.grain()));
    }

    private static ObjectNode material(MaterialPlan plan) {
        var node = JsonShapes.object()
                .put("material", plan.material().name())
                .put("goal", JsonShapes.word(plan.proof().goal()))
                .put("reached", plan.proof().reached())
                .put("lowerBound", plan.proof().least())
                .put("yield", plan.yield());
        plan.price().ifPresent(price -> node.put("price", price.toString()));
        node.set("sheets", JsonShapes.list(plan.sheets(), ReportSheets::sheet));
        return node;
    }

    private static ObjectNode sheet(PlannedSheet sheet) {
        var node = JsonShapes.object()
                .put("from", sheet.from().name())
                .put("sheetLength", sheet.from().length())
                .put("sheetWidth", sheet.from().width());
        node.set("pieces", JsonShapes.list(sheet.pieces(), ReportSheets::piece));
        node.set("cuts", JsonShapes.list(sheet.cuts(), ReportSheets::cut));
        node.set("offcuts", JsonShapes.list(sheet.offcuts(), JsonShapes::area));
        return node;
    }

    private static ObjectNode piece(PlacedPiece piece) {
        var node = JsonShapes.object().put("label", piece.label());
        node.setAll(JsonShapes.area(piece.area()));
        return node.put("turned", piece.turned());
    }

    private static ObjectNode cut(Cut cut) {
        var node = JsonShapes.object().put("number", cut.number()).put("direction", JsonShapes.word(cut.direction()));
        node.set("kerf", JsonShapes.area(cut.kerf()));
        return node;
    }
}
