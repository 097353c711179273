package org.standwright.design.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.Screwing;
import org.standwright.design.wall.built.Unplaced;

/**
 * Walls of cleats worked out from their design.
 *
 * @param screwing how the strips are held to the walls
 * @param holders in the order of the design
 * @param unplaced holders that hang nowhere, in the order of the design
 * @param assembly strips in one group a wall, each holder in a group of its own name
 */
public record CleatWall(
        WallDesign design,
        Screwing screwing,
        List<CleatedWall> walls,
        List<HungHolder> holders,
        List<Unplaced> unplaced,
        Assembly assembly)
        implements Furniture {
    public CleatWall {
        walls = List.copyOf(walls);
        holders = List.copyOf(holders);
        unplaced = List.copyOf(unplaced);
    }

    @Override
    public List<PartsTogether> together() {
        var all = new ArrayList<>(PartsTogether.of(design, assembly.parts()));
        var taken = all.stream()
                .flatMap(together -> together.parts().stream())
                .map(PlacedPart::label)
                .collect(Collectors.toSet());
        all.addAll(HangerChains.of(design, assembly.parts(), taken));
        return all;
    }

    @Override
    public Set<String> later() {
        return Set.of();
    }

    @Override
    public <R> R accept(FurnitureVisitor<R> visitor) {
        return visitor.wall(this);
    }

    /** The wall of a number. */
    public CleatedWall wall(int number) {
        return walls.get(number - 1);
    }
}
