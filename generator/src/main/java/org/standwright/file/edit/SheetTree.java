package org.standwright.file.edit;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.part.SheetGood;

/** A sheet as a file writes it: its material's fields beside its own. */
final class SheetTree {
    private SheetTree() {}

    static ObjectNode of(SheetGood sheet) {
        var material = sheet.material();
        var elasticity = material.elasticity();
        var fields = JsonNodeFactory.instance.objectNode();
        fields.put("name", material.name());
        fields.put("thickness", material.thickness());
        fields.put("density", material.density());
        fields.put("grain", RecordTree.word(material.grain()));
        fields.put("colour", material.colour().toString());
        fields.put("board", RecordTree.word(elasticity.board()));
        if (!elasticity.equals(elasticity.board().usual())) {
            fields.putObject("stiffness").put("along", elasticity.along()).put("across", elasticity.across());
        }
        fields.put("length", sheet.length());
        fields.put("width", sheet.width());
        RecordTree.put(fields, "nominal", sheet.nominal());
        RecordTree.put(fields, "price", sheet.price());
        return fields;
    }
}
