package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;

/** The report's fields on what was decided and what shape it has, which differ by the kind of furniture. */
final class ReportShape implements FurnitureVisitor<ObjectNode> {
    @Override
    public ObjectNode stand(Stand stand) {
        var node = JsonShapes.object();
        node.set("design", ReportDesign.of(stand.design()));
        node.set("built", ReportStand.built(stand));
        node.set("stack", ReportStand.stack(stand.stack()));
        node.set("carcass", JsonShapes.box(stand.carcass()));
        node.set("worktop", JsonShapes.box(stand.worktop()));
        node.set("bays", JsonShapes.list(stand.bays(), ReportContents::bay));
        stand.machine().ifPresent(machine -> node.set("machine", ReportStand.machine(machine)));
        return node;
    }

    @Override
    public ObjectNode wall(CleatWall wall) {
        var node = JsonShapes.object();
        node.set("design", ReportWall.design(wall.design()));
        node.put("wallScrew", wall.screwing().length());
        node.set("walls", JsonShapes.list(wall.walls(), ReportWall::face));
        node.set("holders", JsonShapes.list(wall.holders(), holder -> ReportWall.holder(wall, holder)));
        node.set(
                "notHung",
                JsonShapes.list(
                        wall.unplaced(),
                        left -> JsonShapes.object()
                                .put("name", left.holder().name())
                                .put("why", left.why())));
        return node;
    }
}
