package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.design.kit.Router;
import org.standwright.router.Lie;
import org.standwright.router.RoutedPiece;
import org.standwright.router.RoutedSheet;
import org.standwright.router.RouterPlan;

/** The report's part of a router and its sheets. */
final class ReportRouter {
    private ReportRouter() {}

    static ObjectNode router(Router router) {
        var node = JsonShapes.object()
                .put("bit", router.bit())
                .put("margin", router.margin())
                .put("smallestHole", router.smallestHole())
                .put("below", router.below())
                .put("skin", router.skin())
                .put("relief", JsonShapes.word(router.relief()))
                .put("dowel", router.dowel());
        router.tabs().ifPresent(tabs -> node.set("tabs", JsonShapes.plain(tabs)));
        return node;
    }

    static ObjectNode plan(RouterPlan plan) {
        var node = JsonShapes.object().put("spacing", plan.router().spacing());
        node.set("materials", JsonShapes.list(plan.materials(), ReportRouter::material));
        return node;
    }

    private static ObjectNode material(RouterPlan.MaterialSheets material) {
        var node = JsonShapes.object().put("material", material.material().name());
        node.set("sheets", JsonShapes.list(material.sheets(), ReportRouter::sheet));
        return node;
    }

    private static ObjectNode sheet(RoutedSheet sheet) {
        var node = JsonShapes.object()
                .put("board", sheet.from().name())
                .put("length", sheet.from().length())
                .put("width", sheet.from().width())
                .put("turnedOver", sheet.isTwoSided());
        node.set("pieces", JsonShapes.list(sheet.pieces(), ReportRouter::piece));
        return node;
    }

    private static ObjectNode piece(RoutedPiece piece) {
        Lie lie = piece.lie();
        var node = JsonShapes.object()
                .put("label", piece.label())
                .put("part", piece.part().name())
                .put("benchFaceUp", lie.overturned())
                .put("quarterTurns", lie.quarters())
                .put("originX", lie.shift().x())
                .put("originY", lie.shift().y());
        node.set("area", JsonShapes.rect(piece.outline().bounds()));
        return node;
    }
}
