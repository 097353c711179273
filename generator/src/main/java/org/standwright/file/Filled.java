package org.standwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.Positions;
import org.standwright.file.text.Problems;
import org.standwright.unit.Units;

/** What a value in a file means: numbers in mm, kg and N, defaults filled in, presets in the place of their names. */
public final class Filled {
    private Filled() {}

    /**
     * @param here what the schema says about the place of {@code value}
     * @param unit of plain numbers
     * @throws DesignFileException when a quantity or the name of a preset is wrong
     */
    public static JsonNode of(JsonNode value, SchemaPlace here, Units unit, PresetLibrary presets) {
        var problems = new Problems("value", new Positions());
        var filled = new Walk(presets, problems).copy(value, here, "", unit);
        problems.throwIfAny();
        return filled;
    }
}
