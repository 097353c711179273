package org.standwright.assembly;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.geom.Box3;
import org.standwright.geom.Require;
import org.standwright.geom.Vec3;

/**
 * What moves as one: the carcass, the worktop, a drawer.
 *
 * @param travel how far it moves when opened, along one axis; zero for what stays put
 */
public record Group(String name, Vec3 travel, List<PlacedPart> parts, List<Block> blocks) {
    public Group {
        Require.named("group", name);
        parts = List.copyOf(parts);
        blocks = List.copyOf(blocks);
    }

    public static Group fixed(String name, List<PlacedPart> parts, List<Block> blocks) {
        return new Group(name, Vec3.ZERO, parts, blocks);
    }

    /** The boxes of all that moves, closed. */
    public Stream<Box3> boxes() {
        return Stream.concat(
                parts.stream().map(PlacedPart::box), blocks.stream().map(Block::box));
    }

    public boolean moves() {
        return !travel.equals(Vec3.ZERO);
    }
}
