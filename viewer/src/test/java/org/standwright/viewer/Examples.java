package org.standwright.viewer;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;
import org.standwright.make.Product;

/** Stands that come with the program, worked out once for all tests. */
public final class Examples {
    private static final Map<String, Product> WORKED_OUT = new ConcurrentHashMap<>();

    private Examples() {}

    /** Two bays of drawers under a thickness planer; nothing has a price. */
    public static Product planerStand() {
        return WORKED_OUT.computeIfAbsent("planer-stand", Examples::workedOut);
    }

    /** A door and drawers; some boards have prices. */
    public static Product mortiserStand() {
        return WORKED_OUT.computeIfAbsent("mortiser-stand", Examples::workedOut);
    }

    /** Drawers on runners of bar stock, a worktop with lippings, a board at hand. */
    public static Product scrollSawStand() {
        return WORKED_OUT.computeIfAbsent("scroll-saw-stand", Examples::workedOut);
    }

    private static Product workedOut(String name) {
        var presets = PresetLibrary.of(Path.of(""), Optional.empty());
        var text = presets.find(FileKind.STAND, name).orElseThrow().text();
        return Product.checked(DesignFiles.parse(name, text, presets).design());
    }
}
