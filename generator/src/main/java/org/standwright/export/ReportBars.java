package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.EdgingRun;
import org.standwright.packet.words.BarsToBuy;

/** The report's part of what is bought by its length: bars and edgings. */
final class ReportBars {
    private ReportBars() {}

    /** Its length is that of all pieces with a cut for each; with the length of a bar, the labels cut from each one. */
    static ObjectNode bars(BarsToBuy bars) {
        var node = JsonShapes.object()
                .put("material", bars.run().section().name())
                .put("width", bars.width())
                .put("thickness", bars.run().section().thickness())
                .put("density", bars.run().section().density())
                .put("count", bars.run().count())
                .put("kerf", bars.kerf())
                .put("length", bars.length());
        node.set(
                "lines",
                JsonShapes.words(bars.run().lines().stream().map(CutLine::label).toList()));
        bars.bar().ifPresent(bar -> {
            node.put("barLength", bar.length());
            bar.price().ifPresent(price -> node.put("price", price.toString()));
            bars.barPlan().ifPresent(plan -> node.set("proof", ReportSheets.proof(plan.proof())));
            var plan = node.putArray("bars");
            bars.plan().forEach(labels -> plan.add(JsonShapes.words(labels)));
        });
        return node;
    }

    static ObjectNode edging(EdgingRun run) {
        var node = JsonShapes.object()
                .put("name", run.banding().name())
                .put("thickness", run.banding().thickness())
                .put("length", run.length())
                .put("toBuy", run.toBuy());
        node.set("parts", JsonShapes.words(run.parts()));
        return node;
    }
}
