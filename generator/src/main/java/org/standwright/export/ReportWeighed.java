package org.standwright.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standwright.advice.Advice;
import org.standwright.check.LoadedStand;
import org.standwright.check.wall.HungWall;
import org.standwright.check.wall.LoadLimits;
import org.standwright.check.wall.MostHung;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.solid.AssemblySolids;

/** The report's fields on what would save a sheet and on what weighs, which differ by the kind of furniture. */
record ReportWeighed(AssemblySolids solids, Optional<Advice> savings) implements FurnitureVisitor<ObjectNode> {
    @Override
    public ObjectNode stand(Stand stand) {
        var node = JsonShapes.object();
        savings.ifPresent(advice -> node.set("savings", ReportSavings.of(stand.design(), advice)));
        node.set("weights", JsonShapes.list(LoadedStand.of(stand, solids).weights(), ReportChecks::weight));
        return node;
    }

    @Override
    public ObjectNode wall(CleatWall wall) {
        var node = JsonShapes.object();
        var hung = HungWall.of(wall, solids);
        node.set(
                "weights",
                JsonShapes.list(
                        hung.loads(),
                        load -> JsonShapes.object()
                                .put("what", load.holder().name())
                                .put("wood", load.wood())
                                .put("things", load.things())
                                .put("out", load.out())
                                .put("along", load.along())));
        var limits = LoadLimits.of(hung);
        node.set("stripLimits", limits(limits.strips()));
        node.set("holderLimits", limits(limits.holders()));
        return node;
    }

    private static ArrayNode limits(Map<String, MostHung> limits) {
        return JsonShapes.list(
                List.copyOf(limits.entrySet()),
                most -> JsonShapes.object()
                        .put("what", most.getKey())
                        .put("most", most.getValue().mass())
                        .put("weakest", most.getValue().weakest()));
    }
}
