package org.standwright.viewer.app;

import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.Stand;
import org.standwright.geom.Box3;

/** The sizes of a stand in one line, in its maker's unit. */
record Sizes(Stand stand) {
    /** 'Working height 900 mm · outside 720 × 581 × 790 mm (width × depth × height, without the machine)'. */
    String text() {
        var unit = stand.design().unit();
        var size = outside().size();
        return "Working height " + unit.length(stand.stack().workingHeight()) + " · outside "
                + unit.bareLength(size.x()) + " × " + unit.bareLength(size.y()) + " × " + unit.length(size.z())
                + " (width × depth × height, without the machine)";
    }

    /** From the floor to the top of the worktop, drawers shut. */
    private Box3 outside() {
        var parts = stand.assembly().parts().stream().map(PlacedPart::box);
        var bought = stand.assembly().blocks().stream()
                .filter(block -> block.kind() != Block.Kind.MACHINE)
                .map(Block::box);
        return Box3.around(Stream.concat(parts, bought).toList());
    }
}
