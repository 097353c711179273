package org.standwright.export;

import org.standwright.design.built.CleatWall;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.unit.Units;

/** What a piece of furniture is for, in a sentence: 'Working height 900 mm, for thickness planer.' */
record Purpose(Units units) implements FurnitureVisitor<String> {
    @Override
    public String stand(Stand stand) {
        return "Working height " + units.length(stand.stack().workingHeight()) + ", for "
                + stand.design().machine().name() + ".";
    }

    @Override
    public String wall(CleatWall wall) {
        int strips =
                wall.walls().stream().mapToInt(face -> face.strips().size()).sum();
        return strips + " strips on " + units.area(bare(wall)) + " of bare wall, for "
                + wall.holders().size() + " holders.";
    }

    private static double bare(CleatWall wall) {
        return wall.walls().stream().mapToDouble(face -> face.bare().size()).sum();
    }
}
