package org.standwright.export;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Set;
import java.util.stream.Stream;
import org.standwright.packet.words.CuttingOrder;
import org.standwright.packet.words.Guide;
import org.standwright.packet.words.NumberedSetUp;
import org.standwright.packet.words.SawWords;
import org.standwright.packet.words.SheetCount;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;
import org.standwright.sheet.Cut;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlacedPiece.Parting;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.Proof;
import org.standwright.sheet.SetUp.Made;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.Yield;
import org.standwright.unit.Money;

/** The report's part of a sheet plan, and of the boards it is cut from. */
final class ReportSheets {
    /** Units² in a square millimetre. */
    private static final double SQUARE = (double) SheetUnit.PER_MM * SheetUnit.PER_MM;

    private final Set<String> waiting;

    private ReportSheets(Set<String> waiting) {
        this.waiting = waiting;
    }

    /** @param waiting labels of the pieces of the second stage */
    static ObjectNode plan(SheetPlan plan, Set<String> waiting) {
        var saw = plan.saw();
        var node = JsonShapes.object().put("kerf", saw.kerf());
        node.put("repeatable", plan.isRepeatable());
        node.set("trim", ReportCutting.trim(saw.trim()));
        node.set(
                "prices",
                JsonShapes.words(plan.prices().stream().map(Money::toString).toList()));
        var sheets = new ReportSheets(waiting);
        node.set("materials", JsonShapes.list(plan.materials(), sheets::material));
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

    private ObjectNode material(MaterialPlan plan) {
        var node = JsonShapes.object().put("material", plan.material().name());
        node.set("proof", proof(plan.proof()));
        node.set("yield", shares(plan.areas()));
        plan.price().ifPresent(price -> node.put("price", price.toString()));
        node.set("stock", JsonShapes.list(SheetCount.of(plan), ReportSheets::stock));
        node.set("sheets", JsonShapes.list(plan.sheets(), ReportSheets::sheet));
        var order = CuttingOrder.of(plan, waiting);
        var setUps = node.putArray("setUps");
        order.now().forEach(setUp -> setUps.add(setUp(setUp, 1)));
        order.later().forEach(setUp -> setUps.add(setUp(setUp, 2)));
        return node;
    }

    /** Counted in sheets or bars, thousandths of a currency's unit, or mm². */
    static ObjectNode proof(Proof proof) {
        return JsonShapes.object()
                .put("goal", JsonShapes.word(proof.goal()))
                .put("reached", proof.reached())
                .put("least", proof.least())
                .put("proved", proof.isMinimal());
    }

    /** Areas in mm²; {@code share} is that of the parts, 0 to 1. */
    private static ObjectNode shares(Yield areas) {
        return JsonShapes.object()
                .put("boards", areas.boards() / SQUARE)
                .put("parts", areas.parts() / SQUARE)
                .put("kerf", areas.kerf() / SQUARE)
                .put("trim", areas.trim() / SQUARE)
                .put("offcuts", areas.offcuts() / SQUARE)
                .put("waste", areas.waste() / SQUARE)
                .put("share", areas.share(areas.parts()));
    }

    private static ObjectNode stock(SheetCount count) {
        var from = count.from();
        var node = JsonShapes.object()
                .put("name", from.name())
                .put("count", count.sheets())
                .put("source", JsonShapes.word(from.source()))
                .put("length", from.length())
                .put("width", from.width())
                .put("thickness", from.thickness());
        from.price().ifPresent(price -> node.put("price", price.toString()));
        return node;
    }

    private static ObjectNode sheet(PlannedSheet sheet) {
        var node = JsonShapes.object()
                .put("from", sheet.from().name())
                .put("sheetLength", sheet.from().length())
                .put("sheetWidth", sheet.from().width())
                .put("thickness", sheet.from().thickness());
        node.set("pieces", JsonShapes.list(sheet.pieces(), ReportSheets::piece));
        node.set(
                "cuts",
                JsonShapes.list(sheet.cuts(), cut -> cut(cut, sheet.from().material())));
        node.set("offcuts", JsonShapes.list(sheet.offcuts(), JsonShapes::area));
        return node;
    }

    private static ObjectNode piece(PlacedPiece piece) {
        var node = JsonShapes.object().put("label", piece.label());
        node.setAll(JsonShapes.area(piece.area()));
        node.put("turned", piece.turned());
        if (piece.parting() != Parting.NONE) {
            node.put("parting", JsonShapes.word(piece.parting()));
            node.set("holds", JsonShapes.list(piece.holds(), ReportSheets::piece));
        }
        return node;
    }

    private static ObjectNode cut(Cut cut, Material material) {
        var node = JsonShapes.object()
                .put("number", cut.number())
                .put("direction", JsonShapes.word(cut.direction()))
                .put("tool", JsonShapes.word(cut.tool()))
                .put("purpose", JsonShapes.word(cut.purpose()))
                .put("reference", JsonShapes.word(cut.reference()))
                .put("setting", SheetUnit.mm(cut.setting()))
                .put("guide", Guide.of(cut).words())
                .put("goodFace", cut.goodFaceUp() ? "up" : "down")
                .put("score", cut.isScored(material));
        node.set("kerf", JsonShapes.area(cut.kerf()));
        return node;
    }

    private static ObjectNode setUp(NumberedSetUp numbered, int stage) {
        var setUp = numbered.setUp();
        var node = JsonShapes.object()
                .put("number", numbered.number())
                .put("stage", stage)
                .put("tool", JsonShapes.word(setUp.tool()))
                .put("direction", JsonShapes.word(setUp.direction()))
                .put("setting", numbered.setting());
        node.set("cuts", JsonShapes.list(setUp.cuts(), ReportSheets::made));
        return node;
    }

    /** Sheets count from 1; {@code rest} are those freed whose size is what remains. */
    private static ObjectNode made(Made made) {
        var node = JsonShapes.object()
                .put("sheet", made.sheet() + 1)
                .put("number", made.cut().number())
                .put("reference", JsonShapes.word(made.cut().reference()));
        node.set("frees", labels(made.frees().stream()));
        node.set("rest", labels(made.frees().stream().filter(piece -> SawWords.isRest(made.cut(), piece))));
        node.set("offcuts", JsonShapes.list(made.offcuts(), JsonShapes::area));
        return node;
    }

    private static JsonNode labels(Stream<PlacedPiece> pieces) {
        return JsonShapes.words(pieces.flatMap(piece -> piece.parts().stream())
                .map(PlacedPiece::label)
                .toList());
    }
}
