package org.standwright.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.geom.Outline;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.PlacedSolid;

/** The report's part of an assembly: groups, blocks, and every part with its features and its place. */
final class ReportParts {
    private final Assembly assembly;
    private final AssemblySolids solids;

    ReportParts(Assembly assembly, AssemblySolids solids) {
        this.assembly = assembly;
        this.solids = solids;
    }

    ArrayNode groups() {
        return JsonShapes.list(assembly.groups(), group -> {
            var node = JsonShapes.object().put("name", group.name());
            node.set("travel", JsonShapes.point(group.travel()));
            node.set(
                    "parts",
                    JsonShapes.words(
                            group.parts().stream().map(PlacedPart::label).toList()));
            node.set("blocks", JsonShapes.list(group.blocks(), ReportParts::block));
            return node;
        });
    }

    ArrayNode parts() {
        return JsonShapes.list(solids.solids(), ReportParts::part);
    }

    private static ObjectNode part(PlacedSolid solid) {
        var placed = solid.part();
        var part = placed.part();
        var node = JsonShapes.object()
                .put("label", placed.label())
                .put("name", part.name())
                .put("group", solid.group())
                .put("material", part.material().name())
                .put("mass", solid.mass());
        sizes(part, node);
        node.set("features", features(part));
        node.set("placement", placement(placed.placement()));
        node.set("box", JsonShapes.box(placed.box()));
        return node;
    }

    /** Finished, cut and rough size, and what covers which edge. */
    static void sizes(Part part, ObjectNode node) {
        node.put("length", part.length())
                .put("width", part.width())
                .put("thickness", part.thickness())
                .put("oversize", part.oversize())
                .put("cutLength", part.cutLength())
                .put("cutWidth", part.cutWidth())
                .put("roughLength", part.roughLength())
                .put("roughWidth", part.roughWidth());
        node.set("bands", JsonShapes.plain(part.bands()));
    }

    private static ArrayNode features(Part part) {
        return JsonShapes.list(
                part.features(),
                feature -> feature.accept(new FeatureVisitor<ObjectNode>() {
                    @Override
                    public ObjectNode channel(Channel channel) {
                        return ReportParts.channel(channel);
                    }

                    @Override
                    public ObjectNode hole(Hole hole) {
                        return ReportParts.hole(hole);
                    }

                    @Override
                    public ObjectNode pocket(Pocket pocket) {
                        return ReportParts.pocket(pocket);
                    }

                    @Override
                    public ObjectNode edgeHole(EdgeHole hole) {
                        return ReportParts.edgeHole(hole);
                    }

                    @Override
                    public ObjectNode bevel(Bevel bevel) {
                        return ReportParts.bevel(bevel);
                    }

                    @Override
                    public ObjectNode contour(Contour contour) {
                        return ReportParts.contour(contour);
                    }
                }));
    }

    private static ObjectNode channel(Channel channel) {
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

    private static ObjectNode hole(Hole hole) {
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

    private static ObjectNode pocket(Pocket pocket) {
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

    private static ObjectNode edgeHole(EdgeHole hole) {
        return JsonShapes.object()
                .put("kind", "edge-hole")
                .put("edge", JsonShapes.word(hole.edge()))
                .put("along", hole.along())
                .put("z", hole.z())
                .put("diameter", hole.diameter())
                .put("depth", hole.depth())
                .put("purpose", hole.purpose());
    }

    private static ObjectNode bevel(Bevel bevel) {
        return JsonShapes.object()
                .put("kind", "bevel")
                .put("edge", JsonShapes.word(bevel.edge()))
                .put("face", JsonShapes.word(bevel.face()))
                .put("tilt", bevel.tilt())
                .put("depth", bevel.depth())
                .put("setback", bevel.setback());
    }

    private static ObjectNode contour(Contour contour) {
        var node = JsonShapes.object().put("kind", "contour").put("purpose", contour.purpose());
        node.set("outline", outline(contour.outline()));
        return node;
    }

    private static ArrayNode outline(Outline outline) {
        return JsonShapes.list(
                outline.corners(),
                corner -> JsonShapes.object().put("x", corner.x()).put("y", corner.y()));
    }

    private static ObjectNode placement(Placement placement) {
        var node = JsonShapes.object();
        node.set("along", JsonShapes.point(placement.along().unit()));
        node.set("across", JsonShapes.point(placement.across().unit()));
        node.set("origin", JsonShapes.point(placement.origin()));
        return node;
    }

    private static ObjectNode block(Block block) {
        var node = JsonShapes.object().put("label", block.label()).put("kind", JsonShapes.word(block.kind()));
        node.set("box", JsonShapes.box(block.box()));
        return node;
    }
}
