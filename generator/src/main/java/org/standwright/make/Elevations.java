package org.standwright.make;

import java.util.List;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.wall.ElevationSheet;
import org.standwright.export.SvgWriter;
import org.standwright.solid.AssemblySolids;

/** One file for each wall, as it is seen from the room. */
record Elevations(AssemblySolids solids) implements FurnitureVisitor<List<OutputFile>> {
    @Override
    public List<OutputFile> stand(Stand stand) {
        return List.of();
    }

    @Override
    public List<OutputFile> wall(CleatWall wall) {
        var labels = Limits.of(wall, solids);
        return wall.walls().stream()
                .map(face -> new OutputFile(
                        "walls/"
                                + FileNames.of(
                                        String.valueOf(face.number()),
                                        face.wall().name(),
                                        ".svg"),
                        out -> SvgWriter.write(ElevationSheet.of(wall, face, labels, TextMeasure.shipped()), out)))
                .toList();
    }
}
