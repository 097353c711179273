package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.design.Savings;
import org.standwright.design.Savings.OtherSheet;
import org.standwright.design.StockEntry;
import org.standwright.design.StockPlan;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Trim;
import org.standwright.part.SheetGood;

/** The report's part of what a maker decided on boards, on the saw, and on what may change to save some. */
final class ReportCutting {
    private ReportCutting() {}

    static ObjectNode stock(StockPlan stock) {
        var node = JsonShapes.object();
        node.set("keep", JsonShapes.plain(stock.keep()));
        node.set("sheets", JsonShapes.list(stock.sheets(), ReportCutting::entry));
        return node;
    }

    private static ObjectNode entry(StockEntry entry) {
        var node = JsonShapes.object();
        node.set("sheet", sheet(entry.sheet()));
        entry.name().ifPresent(name -> node.put("name", name));
        entry.length().ifPresent(length -> node.put("length", length));
        entry.width().ifPresent(width -> node.put("width", width));
        entry.count().ifPresent(count -> node.put("count", count));
        entry.thickness().ifPresent(thickness -> node.put("thickness", thickness));
        entry.price().ifPresent(price -> node.put("price", price.toString()));
        return node.put("atHand", entry.atHand());
    }

    static ObjectNode saw(Saw saw) {
        var node = JsonShapes.object().put("kerf", saw.kerf());
        node.set("trim", trim(saw.trim()));
        saw.stages().ifPresent(most -> node.put("stages", most));
        node.put("first", JsonShapes.word(saw.first()));
        saw.longestRip().ifPresent(longest -> node.put("longestRip", longest));
        saw.longestCrosscut().ifPresent(longest -> node.put("longestCrosscut", longest));
        node.put("smallestPiece", saw.smallestPiece());
        saw.breakDown().ifPresent(hand -> node.set("breakDown", JsonShapes.plain(hand)));
        return node;
    }

    static ObjectNode trim(Trim trim) {
        return JsonShapes.object()
                .put("left", trim.left())
                .put("right", trim.right())
                .put("bottom", trim.bottom())
                .put("top", trim.top());
    }

    static ObjectNode savings(Savings savings) {
        var node = JsonShapes.object();
        node.set("width", JsonShapes.plain(savings.width()));
        node.set("depth", JsonShapes.plain(savings.depth()));
        node.set("workingHeight", JsonShapes.plain(savings.workingHeight()));
        node.put("fewerDrawers", savings.fewerDrawers());
        node.set("sheets", JsonShapes.list(savings.sheets(), ReportCutting::other));
        node.put("backInTwo", savings.backInTwo());
        node.set("freeGrain", JsonShapes.list(savings.freeGrain(), ReportCutting::sheet));
        return node;
    }

    private static ObjectNode other(OtherSheet other) {
        var node = JsonShapes.object();
        node.set("instead", sheet(other.instead()));
        node.set("sheet", ReportSheets.good(other.sheet()));
        return node;
    }

    /** Which of the materials: two may share a name when one was measured off its preset. */
    static ObjectNode sheet(SheetGood sheet) {
        return JsonShapes.object()
                .put("name", sheet.material().name())
                .put("thickness", sheet.material().thickness());
    }
}
