package org.standwright.viewer.work;

import java.util.Optional;
import org.standwright.design.Design;
import org.standwright.file.PresetLibrary;
import org.standwright.unit.Units;
import org.standwright.viewer.document.Document;
import org.standwright.viewer.document.Reading;

/**
 * What is to be worked out.
 *
 * @param name what messages call the file
 * @param units to read back; the design's own when empty
 */
record Request(Document document, String name, PresetLibrary presets, Optional<Units> units) {
    Reading read() {
        return document.read(name, presets);
    }

    Design wanted(Design design) {
        return units.map(design::readIn).orElse(design);
    }
}
