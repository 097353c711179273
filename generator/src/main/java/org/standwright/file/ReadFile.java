package org.standwright.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.JsonText;
import org.standwright.file.text.JsonTextReader;
import org.standwright.file.text.Problems;
import org.standwright.file.text.SourceText;
import org.standwright.unit.Units;

/**
 * A file that has passed every check.
 *
 * @param values its tree with numbers in mm, kg and N, defaults and presets in place
 * @param record what it describes, of the kind's type
 */
record ReadFile(JsonText json, ObjectNode values, Object record) {

    /**
     * @param wanted kinds that the reader can use
     * @throws DesignFileException with everything that is wrong with the file and with the presets it names
     */
    static ReadFile of(SourceText source, List<FileKind> wanted, PresetLibrary presets) {
        var json = JsonTextReader.read(source);
        var kind = FileHeader.check(json, wanted);
        var problems = new Problems(json.file(), json.positions());
        var schema = DesignSchema.published();
        new PlainMessages(schema.root(), json, problems).add(schema.check(json.root()));
        var values = new Walk(presets, problems).copy(json.root(), schema.root(), "", Units.MM);
        problems.throwIfAny();
        return new ReadFile(json, (ObjectNode) values, Binding.bind(values, kind, json));
    }
}
