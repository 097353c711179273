package org.standwright.make;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.packet.MassLine;
import org.standwright.solid.AssemblySolids;

/** What each kind of furniture weighs, group by group. */
record Masses(AssemblySolids solids) implements FurnitureVisitor<List<MassLine>> {
    @Override
    public List<MassLine> stand(Stand stand) {
        var lines = new ArrayList<MassLine>();
        for (var group : stand.assembly().groups()) {
            wood(group).ifPresent(mass -> lines.add(new MassLine(group.name(), mass)));
            if (group.blocks().stream().anyMatch(block -> block.kind() == Block.Kind.MACHINE)) {
                var machine = stand.design().machine();
                lines.add(new MassLine(machine.name(), machine.mass()));
            }
        }
        return lines;
    }

    @Override
    public List<MassLine> wall(CleatWall wall) {
        return wall.assembly().groups().stream()
                .flatMap(group -> wood(group).stream().mapToObj(mass -> new MassLine(group.name(), mass)))
                .toList();
    }

    /** Boards of one group, kg; nothing where it has none. */
    private OptionalDouble wood(Group group) {
        double mass = solids.solids().stream()
                .filter(solid -> solid.group().equals(group.name()))
                .mapToDouble(solid -> solid.mass())
                .sum();
        return mass > 0 ? OptionalDouble.of(mass) : OptionalDouble.empty();
    }
}
