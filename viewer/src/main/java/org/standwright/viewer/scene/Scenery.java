package org.standwright.viewer.scene;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.assembly.Placement;
import org.standwright.geom.Box3;
import org.standwright.part.Part;
import org.standwright.solid.Fineness;
import org.standwright.solid.Solid;
import org.standwright.solid.Solids;

/**
 * All there is to see of an assembly, worked out away from the screen.
 *
 * @param boards every part as a solid; equal parts share one
 * @param box around everything
 */
public record Scenery(List<Board> boards, List<Block> blocks, Box3 box) {
    public Scenery {
        boards = List.copyOf(boards);
        blocks = List.copyOf(blocks);
    }

    /** One part at its place. */
    record Board(String label, Tone tone, Solid solid, Placement placement) {}

    /** Slow: makes the solids. Throws {@link org.standwright.solid.SolidException} for a part that has none. */
    public static Scenery of(Assembly assembly) {
        var solids = new HashMap<Part, Solid>();
        var boards = new ArrayList<Board>();
        for (var group : assembly.groups()) {
            for (var placed : group.parts()) {
                var solid = solids.computeIfAbsent(placed.part(), part -> Solids.of(part, Fineness.SCREEN));
                boards.add(new Board(placed.label(), Tone.of(group, placed.part()), solid, placed.placement()));
            }
        }
        return new Scenery(boards, assembly.blocks(), assembly.box());
    }
}
