package org.standwright.design.wall.row;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Screwing;
import org.standwright.design.wall.built.Strip;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Bevel;
import org.standwright.part.Edge;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Hole;
import org.standwright.part.Part;

/**
 * Strips as parts where they belong. A strip lies with its bench face, the short one, on the wall, and its show face to
 * the room; its length runs along the wall and its width upwards, the bevel at the top falls towards the wall.
 */
public final class StripParts {
    private StripParts() {}

    /** All strips of a wall, row by row from the lowest, in assembly coordinates. */
    public static List<PlacedPart> of(CleatedWall wall, Cleat cleat, Screwing screwing) {
        return wall.strips().stream()
                .map(strip -> placed(wall, strip, cleat, screwing))
                .toList();
    }

    private static PlacedPart placed(CleatedWall wall, Strip strip, Cleat cleat, Screwing screwing) {
        var corner = new Vec3(strip.along().from(), 0, strip.top() - cleat.height());
        var placement = new Placement(Axis.X_PLUS, Axis.Z_PLUS, corner);
        return new PlacedPart(
                strip.label(), part(strip, cleat, screwing), wall.frame().apply(placement));
    }

    private static Part part(Strip strip, Cleat cleat, Screwing screwing) {
        var features = new ArrayList<Feature>();
        features.add(new Bevel(Edge.Y1, Face.BENCH, cleat.tilt(), cleat.bevelDepth()));
        for (double stud : strip.studs()) {
            for (double height : strip.screws()) {
                features.add(Hole.through(stud - strip.along().from(), height, screwing.bore(), "wall screw")
                        .with(screwing.recess()));
            }
        }
        return Part.blank("strip", cleat.sheet().material(), strip.along().length(), cleat.height())
                .with(features);
    }
}
