package org.standwright.export.mesh;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standwright.assembly.Placement;
import org.standwright.export.SafeNames;
import org.standwright.geom.Vec3;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.PlacedSolid;

/** The JSON of a GLB: scene, nodes, meshes and materials. */
final class GlbScene {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final ObjectMapper JSON = new ObjectMapper();
    /** Between gloss (0) and none at all (1): raw wood, by eye. */
    private static final double ROUGHNESS = 0.8;

    private final AssemblySolids assembly;
    private final List<Body> bodies;
    private final GlbMeshes meshes;
    private final Palette palette;
    private final SafeNames names = SafeNames.ofAnyLetters();
    private final ArrayNode nodes = NODES.arrayNode();

    GlbScene(AssemblySolids assembly, List<Body> bodies, GlbMeshes meshes) {
        this.assembly = assembly;
        this.bodies = bodies;
        this.meshes = meshes;
        palette = Palette.of(assembly, SafeNames.ofAnyLetters());
    }

    byte[] json() throws IOException {
        var file = NODES.objectNode();
        file.putObject("asset").put("version", "2.0").put("generator", "Standwright");
        file.put("scene", 0);
        var scene = file.putArray("scenes").addObject().put("name", SafeNames.printable(assembly.name()));
        if (!bodies.isEmpty()) {
            scene.set("nodes", groups());
            file.set("nodes", nodes);
            file.set("meshes", meshes());
            file.set("materials", materials());
            file.set("accessors", meshes.accessors());
            file.set("bufferViews", meshes.views());
            file.putArray("buffers").addObject().put("byteLength", meshes.bytes().length);
        }
        return JSON.writeValueAsBytes(file);
    }

    /** A node for each group with its parts below it; their numbers. */
    private ArrayNode groups() {
        var groups = new LinkedHashMap<String, ArrayNode>();
        var mesh = meshOfPart();
        for (var placed : assembly.solids()) {
            var children = groups.computeIfAbsent(placed.group(), group -> NODES.arrayNode());
            children.add(nodes.size());
            nodes.addObject().put("name", names.of(placed.label())).put("mesh", mesh.get(placed.label()));
            ((ObjectNode) nodes.get(nodes.size() - 1)).set("matrix", matrix(placed.placement()));
        }
        var numbers = NODES.arrayNode();
        groups.forEach((group, children) -> {
            numbers.add(nodes.size());
            nodes.addObject().put("name", names.of(group)).set("children", children);
        });
        return numbers;
    }

    private Map<String, Integer> meshOfPart() {
        var numbers = new HashMap<String, Integer>();
        for (int i = 0; i < bodies.size(); i++) {
            for (PlacedSolid part : bodies.get(i).parts()) {
                numbers.put(part.label(), i);
            }
        }
        return numbers;
    }

    /** Column by column: where the node's own x, y and z point, and where its origin lies. */
    private static ArrayNode matrix(Placement placement) {
        var matrix = NODES.arrayNode();
        direction(placement.along().unit(), matrix);
        direction(placement.through().unit(), matrix);
        direction(placement.across().opposite().unit(), matrix);
        var origin = Metres.turned(placement.origin());
        matrix.add(Metres.exact(origin.x()));
        matrix.add(Metres.exact(origin.y()));
        matrix.add(Metres.exact(origin.z()));
        return matrix.add(1);
    }

    private static void direction(Vec3 unit, ArrayNode matrix) {
        var turned = Metres.turned(unit);
        matrix.add((int) turned.x()).add((int) turned.y()).add((int) turned.z()).add(0);
    }

    private ArrayNode meshes() {
        var all = NODES.arrayNode();
        var meshNames = SafeNames.ofAnyLetters();
        for (int i = 0; i < bodies.size(); i++) {
            var mesh = all.addObject().put("name", meshNames.of(bodies.get(i).name()));
            var primitive = mesh.putArray("primitives").addObject();
            primitive.putObject("attributes").put("POSITION", 2 * i);
            primitive.put("indices", 2 * i + 1);
            primitive.put("material", palette.index(bodies.get(i).material()));
        }
        return all;
    }

    private ArrayNode materials() {
        var all = NODES.arrayNode();
        for (int i = 0; i < palette.size(); i++) {
            var material = all.addObject().put("name", palette.name(i));
            var look = material.putObject("pbrMetallicRoughness");
            look.set("baseColorFactor", LinearColour.of(palette.colour(i)));
            look.put("metallicFactor", 0).put("roughnessFactor", ROUGHNESS);
        }
        return all;
    }
}
