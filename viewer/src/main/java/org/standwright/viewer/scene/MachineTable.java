package org.standwright.viewer.scene;

import java.util.Comparator;
import java.util.Optional;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/** The surface that a machine works on: the top of its base, which reaches up to there. */
final class MachineTable {
    static final Tone TONE = new Tone("machine-table");

    /** Just enough to see it; mm. */
    private static final double THICKNESS = 6;

    private MachineTable() {}

    /** Empty where no machine stands, or nothing but its whole size is known. The plate has the name of the base. */
    static Optional<Block> of(Group group) {
        var machines = group.blocks().stream()
                .filter(block -> block.kind() == Block.Kind.MACHINE)
                .sorted(Comparator.comparingDouble(block -> block.box().max().z()))
                .toList();
        return machines.size() < 2 ? Optional.empty() : Optional.of(plate(machines.get(0)));
    }

    private static Block plate(Block base) {
        var box = base.box();
        var low = new Vec3(
                box.min().x(), box.min().y(), Math.max(box.min().z(), box.max().z() - THICKNESS));
        return new Block(base.label(), base.kind(), new Box3(low, box.max()));
    }
}
