package org.standwright.export;

import java.util.List;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Part;
import org.standwright.solid.SampleParts;

/** A few boards at their places. */
public final class SampleAssembly {
    private SampleAssembly() {}

    public static Assembly twoSidesAndABack() {
        return new Assembly(
                "Wäller's stand",
                List.of(
                        Group.fixed(
                                "carcass",
                                List.of(
                                        placed("left side", SampleParts.shelves(), Axis.Y_PLUS, Vec3.ZERO),
                                        placed(
                                                "right/side",
                                                SampleParts.shelves(),
                                                Axis.Y_MINUS,
                                                new Vec3(500.7, 0, 0))),
                                List.of()),
                        Group.fixed(
                                "rest",
                                List.of(
                                        placed("right side", SampleParts.plain(), Axis.X_PLUS, new Vec3(10, 900, 0)),
                                        placed("drawer", SampleParts.drawerSide(), Axis.X_PLUS, new Vec3(9, 500, 0))),
                                List.of())),
                List.of());
    }

    private static PlacedPart placed(String label, Part part, Axis across, Vec3 origin) {
        return new PlacedPart(label, part, new Placement(Axis.Z_PLUS, across, origin));
    }
}
