package org.standwright.viewer.app;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.Furniture;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.geom.Box3;

/** The sizes of a piece of furniture in one line, in its maker's unit. */
final class Sizes implements FurnitureVisitor<String> {
    /** 'Working height 900 mm · outside 720 × 581 × 790 mm (width × depth × height, without the machine)'. */
    @Override
    public String stand(Stand stand) {
        return "Working height " + stand.design().unit().length(stand.stack().workingHeight()) + " · outside "
                + outside(stand) + " (width × depth × height, without the machine)";
    }

    /** '24 strips · 11 holders · 7.31 m² of bare wall'. */
    @Override
    public String wall(CleatWall wall) {
        double bare =
                wall.walls().stream().mapToDouble(face -> face.bare().size()).sum();
        int strips =
                wall.walls().stream().mapToInt(face -> face.strips().size()).sum();
        return strips + " strips · " + wall.holders().size() + " holders · "
                + wall.design().unit().area(bare) + " of bare wall";
    }

    /** From the floor to the top of what is built, drawers shut: '720 × 581 × 790 mm'. */
    private static String outside(Furniture furniture) {
        var unit = furniture.design().unit();
        var size = Box3.around(boxes(furniture.assembly())).size();
        return unit.bareLength(size.x()) + " × " + unit.bareLength(size.y()) + " × " + unit.length(size.z());
    }

    private static List<Box3> boxes(Assembly assembly) {
        var parts = assembly.parts().stream().map(PlacedPart::box);
        var bought = assembly.blocks().stream()
                .filter(block -> block.kind() != Block.Kind.MACHINE)
                .map(Block::box);
        return Stream.concat(parts, bought).toList();
    }
}
