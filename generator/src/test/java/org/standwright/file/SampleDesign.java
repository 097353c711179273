package org.standwright.file;

import java.nio.file.Path;
import java.util.Optional;
import org.standwright.design.StandDesign;

/** A small complete design for tests, with everything written that has a default. */
public final class SampleDesign {
    public static final String TEXT = """
            {
              "version": 1,
              "kind": "stand",
              "name": "Test stand",
              "unit": "mm",
              "machine": "thickness-planer",
              "workingHeight": "900 mm",
              "plan": { "width": 720, "depth": 560 },
              "support": { "kind": "casters", "caster": "caster-100" },
              "carcass": { "sheet": "birch-18", "back": "birch-6.5", "housing": 6, "fit": "0.15 mm" },
              "worktop": {
                "sheet": "birch-18",
                "layers": 2,
                "overhang": { "front": 20, "back": 0, "left": 0, "right": 0 }
              },
              "bays": [
                { "width": "400 mm", "contents": [{ "kind": "drawers", "fronts": [90, "100 mm"] }] },
                { "contents": [{ "kind": "equal-drawers", "count": 3 }, { "kind": "filled-drawers", "front": 80 }] }
              ],
              "drawers": {
                "box": "birch-12",
                "bottom": "birch-6.5",
                "front": "birch-18",
                "hang": { "kind": "slides", "slide": "slide-45-full" },
                "mount": "overlay",
                "gap": 3,
                "bumper": 1.5
              },
              "screws": { "panel": "screw-4", "slide": "slide-screw-4" },
              "saw": { "kerf": 3.2, "trim": 5 }
            }
            """;

    private SampleDesign() {}

    /** The design with its first {@code old} replaced. */
    static String with(String old, String replacement) {
        int at = TEXT.indexOf(old);
        if (at < 0) {
            throw new IllegalArgumentException("not in the sample: " + old);
        }
        return TEXT.substring(0, at) + replacement + TEXT.substring(at + old.length());
    }

    /** The presets that come with the program, and none beside. */
    static PresetLibrary builtIn() {
        return PresetLibrary.of(Path.of("no such folder"), Optional.empty());
    }

    public static DesignFile read(String text) {
        return DesignFiles.parse("stand.json", text, builtIn());
    }

    /** The stand that a text describes. */
    static StandDesign stand(String text) {
        return (StandDesign) read(text).design();
    }
}
