package org.standwright.solid;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import org.standwright.part.Part;
import org.standwright.solid.layer.Ring;

/** The blanks and tools of parts as whole numbers of 1/1024 mm, for builders of solids that are not ours. */
public final class ToolsJson {
    private static final ObjectMapper JSON = new ObjectMapper();

    private ToolsJson() {}

    /** One object: to each part's name its blank and all its tools. */
    public static void write(Collection<Part> parts, Fineness fineness, Path file) throws IOException {
        var all = JSON.createObjectNode();
        for (var part : parts) {
            var workpiece = Workpiece.of(part, fineness);
            var node = all.putObject(part.name());
            node.set("blank", prism(workpiece.blank()));
            var tools = node.putArray("tools");
            workpiece.tools().forEach(tool -> tools.add(tool(tool)));
        }
        JSON.writeValue(file.toFile(), all);
    }

    private static ObjectNode tool(Tool tool) {
        return tool instanceof Cone cone ? cone(cone) : prism((Prism) tool);
    }

    private static ObjectNode prism(Prism prism) {
        var node = JSON.createObjectNode();
        node.put("kind", "prism").put("direction", prism.direction().name());
        node.put("bottom", prism.bottom()).put("top", prism.top());
        node.set("ring", ring(prism.ring()));
        return node;
    }

    private static ObjectNode cone(Cone cone) {
        var node = JSON.createObjectNode();
        node.put("kind", "cone").put("face", cone.face()).put("floor", cone.floor());
        node.put("beyond", cone.beyond());
        node.set("mouth", ring(cone.mouth()));
        node.set("bore", ring(cone.bore()));
        return node;
    }

    private static ArrayNode ring(Ring ring) {
        var array = JSON.createArrayNode();
        for (int i = 0; i < ring.size(); i++) {
            array.add(JSON.createArrayNode().add(ring.u(i)).add(ring.v(i)));
        }
        return array;
    }
}
