package org.standwright.make;

import java.util.List;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.wall.WallElevation;
import org.standwright.drawing.wall.WallLabels;
import org.standwright.export.SvgWriter;
import org.standwright.solid.AssemblySolids;

/** One file for each wall, as it is seen from the room. */
record Elevations(AssemblySolids solids) implements FurnitureVisitor<List<OutputFile>> {
    /** Room for one wall's figure, mm, and the white around it. */
    private static final double WIDTH = 400;

    private static final double HEIGHT = 277;
    private static final double MARGIN = 10;

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
                        out -> SvgWriter.write(drawing(wall, face, labels), out)))
                .toList();
    }

    private static Drawing drawing(CleatWall wall, CleatedWall face, WallLabels labels) {
        var title = wall.design().name() + ": wall " + face.wall().name();
        var measure = TextMeasure.shipped();
        var figure =
                WallElevation.of(wall, face, labels, WIDTH, HEIGHT, measure).titled(title, WIDTH / 2, measure);
        return new Drawing(
                title, figure.width() + 2 * MARGIN, figure.height() + 2 * MARGIN, List.of(figure.at(MARGIN, MARGIN)));
    }
}
