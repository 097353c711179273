package org.standwright.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.part.Part;
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
        node.set("features", JsonShapes.list(part.features(), feature -> feature.accept(new FeatureNode())));
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
