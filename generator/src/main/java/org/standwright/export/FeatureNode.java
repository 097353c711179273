package org.standwright.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.geom.Outline;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;

/** A feature as the report has it: its kind, then its fields. */
final class FeatureNode implements FeatureVisitor<ObjectNode> {
    @Override
    public ObjectNode channel(Channel channel) {
        var area = channel.area();
        return JsonShapes.object()
                .put("kind", "channel")
                .put("face", JsonShapes.word(channel.face()))
                .put("run", JsonShapes.word(channel.run()))
                .put("x0", area.x0())
                .put("y0", area.y0())
                .put("x1", area.x1())
                .put("y1", area.y1())
                .put("depth", channel.depth());
    }

    @Override
    public ObjectNode hole(Hole hole) {
        var node = JsonShapes.object()
                .put("kind", "hole")
                .put("face", JsonShapes.word(hole.face()))
                .put("x", hole.x())
                .put("y", hole.y())
                .put("diameter", hole.diameter())
                .put("through", hole.depth().isEmpty())
                .put("purpose", hole.purpose());
        hole.depth().ifPresent(depth -> node.put("depth", depth));
        hole.recess().ifPresent(recess -> node.set("recess", recess(recess, hole.diameter())));
        return node;
    }

    private static ObjectNode recess(Recess recess, double bore) {
        var node = JsonShapes.object()
                .put("kind", recess instanceof Recess.Countersink ? "countersink" : "counterbore")
                .put("diameter", recess.diameter())
                .put("depth", recess.depth(bore));
        if (recess instanceof Recess.Countersink cone) {
            node.put("angle", cone.angle());
        }
        return node;
    }

    @Override
    public ObjectNode pocket(Pocket pocket) {
        var area = pocket.area();
        var node = JsonShapes.object()
                .put("kind", "pocket")
                .put("face", JsonShapes.word(pocket.face()))
                .put("x0", area.x0())
                .put("y0", area.y0())
                .put("x1", area.x1())
                .put("y1", area.y1())
                .put("radius", pocket.radius())
                .put("through", pocket.depth().isEmpty())
                .put("purpose", pocket.purpose());
        pocket.depth().ifPresent(depth -> node.put("depth", depth));
        if (!pocket.outline().isRectangle()) {
            node.set("outline", outline(pocket.outline()));
        }
        return node;
    }

    @Override
    public ObjectNode edgeHole(EdgeHole hole) {
        return JsonShapes.object()
                .put("kind", "edge-hole")
                .put("edge", JsonShapes.word(hole.edge()))
                .put("along", hole.along())
                .put("z", hole.z())
                .put("diameter", hole.diameter())
                .put("depth", hole.depth())
                .put("purpose", hole.purpose());
    }

    @Override
    public ObjectNode bevel(Bevel bevel) {
        return JsonShapes.object()
                .put("kind", "bevel")
                .put("edge", JsonShapes.word(bevel.edge()))
                .put("face", JsonShapes.word(bevel.face()))
                .put("tilt", bevel.tilt())
                .put("depth", bevel.depth())
                .put("setback", bevel.setback());
    }

    @Override
    public ObjectNode contour(Contour contour) {
        var node = JsonShapes.object().put("kind", "contour").put("purpose", contour.purpose());
        node.set("outline", outline(contour.outline()));
        return node;
    }

    private static ArrayNode outline(Outline outline) {
        return JsonShapes.list(
                outline.corners(),
                corner -> JsonShapes.object().put("x", corner.x()).put("y", corner.y()));
    }
}
