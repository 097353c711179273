package org.standwright.export;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.standwright.file.Families;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.sheet.Area;
import org.standwright.sheet.SheetUnit;

/** Points, boxes and lists as the report writes them: points are arrays of three, lengths exact doubles in mm. */
final class JsonShapes {
    static final JsonMapper JSON = Families.addTo(JsonMapper.builder())
            .addModule(new Jdk8Module())
            .defaultPropertyInclusion(
                    JsonInclude.Value.construct(JsonInclude.Include.NON_ABSENT, JsonInclude.Include.NON_ABSENT))
            .build();

    private JsonShapes() {}

    static ObjectNode object() {
        return JSON.createObjectNode();
    }

    static <T> ArrayNode list(List<T> values, Function<T, ObjectNode> toNode) {
        var array = JSON.createArrayNode();
        values.forEach(value -> array.add(toNode.apply(value)));
        return array;
    }

    static ArrayNode words(List<String> values) {
        var array = JSON.createArrayNode();
        values.forEach(array::add);
        return array;
    }

    /** A record of plain numbers and words under its own names; one of a family with its kind as a file calls it. */
    static ObjectNode plain(Object values) {
        return JSON.valueToTree(values);
    }

    static ArrayNode point(Vec3 point) {
        // adding 0.0 turns -0.0 into 0.0
        return JSON.createArrayNode().add(point.x() + 0.0).add(point.y() + 0.0).add(point.z() + 0.0);
    }

    static ObjectNode box(Box3 box) {
        var node = object();
        node.set("min", point(box.min()));
        node.set("max", point(box.max()));
        return node;
    }

    /** A rectangle in a vertical plane, seen from the front. */
    static ObjectNode frontView(Rect rect) {
        return object().put("x0", rect.x0() + 0.0)
                .put("z0", rect.y0())
                .put("x1", rect.x1())
                .put("z1", rect.y1());
    }

    /** A rectangle seen from above. */
    static ObjectNode rect(Rect rect) {
        return object().put("x0", rect.x0() + 0.0)
                .put("y0", rect.y0() + 0.0)
                .put("x1", rect.x1())
                .put("y1", rect.y1());
    }

    /** A rectangle on a sheet, in mm. */
    static ObjectNode area(Area area) {
        return object().put("x", SheetUnit.mm(area.x()))
                .put("y", SheetUnit.mm(area.y()))
                .put("length", SheetUnit.mm(area.length()))
                .put("width", SheetUnit.mm(area.width()));
    }

    /** ALONG_LENGTH as 'along-length'. */
    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
