package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.advice.Advice;
import org.standwright.advice.Cost;
import org.standwright.advice.Saving;
import org.standwright.design.StandDesign;

/** The report's part on what would save a sheet; areas of boards to buy in mm². */
final class ReportSavings {
    private final StandDesign before;

    private ReportSavings(StandDesign before) {
        this.before = before;
    }

    static ObjectNode of(StandDesign before, Advice advice) {
        var report = new ReportSavings(before);
        var node = JsonShapes.object().put("tried", advice.tried());
        node.set("before", cost(advice.before()));
        node.set("found", JsonShapes.list(advice.savings(), report::saving));
        node.set("unused", JsonShapes.words(advice.unused()));
        return node;
    }

    private ObjectNode saving(Saving saving) {
        var node = JsonShapes.object().put("size", saving.size());
        node.set(
                "changes",
                JsonShapes.words(saving.changes().stream()
                        .map(change -> change.words(before))
                        .toList()));
        node.set("after", cost(saving.after()));
        node.set("also", JsonShapes.words(saving.also()));
        return node;
    }

    private static ObjectNode cost(Cost cost) {
        var node = JsonShapes.object().put("sheets", cost.sheets()).put("area", cost.area());
        cost.money().ifPresent(money -> node.put("price", money.toString()));
        return node;
    }
}
