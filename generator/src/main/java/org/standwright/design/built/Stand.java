package org.standwright.design.built;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.StandDesign;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;

/**
 * A stand worked out from its design.
 *
 * @param design as its maker wrote it
 * @param carcass the box between the outsides of the two side panels, without worktop, fronts and support
 */
public record Stand(
        StandDesign design,
        HeightStack stack,
        Box3 carcass,
        List<BayLayout> bays,
        Optional<MachineLayout> machine,
        Assembly assembly)
        implements Furniture {
    public Stand {
        bays = List.copyOf(bays);
    }

    /** The box around all parts that lie above the carcass, or the carcass itself. */
    public Box3 worktop() {
        var boxes = assembly.parts().stream()
                .map(PlacedPart::box)
                .filter(box -> !Grid.less(box.min().z(), carcass.max().z()))
                .toList();
        return boxes.isEmpty() ? carcass : Box3.around(boxes);
    }

    @Override
    public List<PartsTogether> together() {
        return PartsTogether.of(design, bays, assembly.parts());
    }

    @Override
    public Set<String> later() {
        return LaterParts.of(this);
    }

    @Override
    public <R> R accept(FurnitureVisitor<R> visitor) {
        return visitor.stand(this);
    }
}
