package org.standwright.make;

import org.standwright.design.built.CleatWall;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.export.OverviewTextWriter;
import org.standwright.export.WallTextWriter;

/** What each kind of furniture comes to, as text. */
final class Overview implements FurnitureVisitor<OutputFile.Content> {
    @Override
    public OutputFile.Content stand(Stand stand) {
        return out -> OverviewTextWriter.write(stand, out);
    }

    @Override
    public OutputFile.Content wall(CleatWall wall) {
        return out -> WallTextWriter.write(wall, out);
    }
}
