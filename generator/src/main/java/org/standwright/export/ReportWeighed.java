package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.standwright.advice.Advice;
import org.standwright.check.LoadedStand;
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
}
