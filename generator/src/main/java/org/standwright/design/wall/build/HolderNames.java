package org.standwright.design.wall.build;

import java.util.HashSet;
import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.WallDesign;

/** Holders are told apart by their names, and from the rows of a wall. */
final class HolderNames {
    private HolderNames() {}

    static void check(WallDesign design) {
        var taken = new HashSet<String>();
        design.walls().forEach(wall -> taken.add(wall.name() + " rows"));
        for (int i = 0; i < design.holders().size(); i++) {
            var name = design.holders().get(i).name();
            if (!taken.add(name)) {
                throw new ImpossibleDesignException(
                        "/holders/" + i + "/name",
                        "'" + name + "' is taken already.",
                        List.of("Call it otherwise, such as '" + name + " " + (i + 1) + "'."));
            }
        }
    }
}
