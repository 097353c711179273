package org.standwright.viewer.preset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.geom.Box3;

/**
 * A piece of furniture seen from the front: the boxes of its boards and bought things, the farthest first.
 *
 * @param box around all of them
 */
record Silhouette(List<Seen> boxes, Box3 box) {
    Silhouette {
        boxes = List.copyOf(boxes);
    }

    /** What a box is the outline of. */
    enum Stuff {
        WOOD,
        METAL,
        MACHINE
    }

    record Seen(Stuff stuff, Box3 box) {}

    static Silhouette of(Assembly assembly) {
        var seen = new ArrayList<Seen>();
        assembly.parts().forEach(part -> seen.add(new Seen(Stuff.WOOD, part.box())));
        for (var block : assembly.blocks()) {
            seen.add(new Seen(block.kind() == Block.Kind.MACHINE ? Stuff.MACHINE : Stuff.METAL, block.box()));
        }
        seen.sort(Comparator.comparingDouble((Seen one) -> one.box().min().y()).reversed());
        return new Silhouette(seen, assembly.box());
    }
}
