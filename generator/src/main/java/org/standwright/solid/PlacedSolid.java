package org.standwright.solid;

import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.assembly.Pose;
import org.standwright.geom.Vec3;
import org.standwright.part.Colour;
import org.standwright.part.Material;

/**
 * The solid of one part of an assembly.
 *
 * @param group that the part belongs to
 * @param solid in the part's own frame; parts of one workpiece share it
 */
public record PlacedSolid(String group, PlacedPart part, Solid solid) {

    public String label() {
        return part.label();
    }

    public Material material() {
        return part.part().material();
    }

    public Colour colour() {
        return material().colour();
    }

    /** Where the solid belongs: the part's placement, its shift rounded to the 1/1024 mm grid. */
    public Placement placement() {
        return shifted(Vec3.ZERO);
    }

    /**
     * Where the solid stands in a pose. How far it goes from where it belongs is rounded to the grid by itself, so that
     * what moves as one stays as it was.
     */
    public Placement placement(Pose pose) {
        return shifted(Solid.onGrid(pose.shift(group, part.box()), label()));
    }

    private Placement shifted(Vec3 shift) {
        var own = part.placement();
        return new Placement(
                own.along(), own.across(), Solid.onGrid(own.origin(), label()).plus(shift));
    }

    /** The solid where it belongs, in assembly coordinates. */
    public Solid inPlace() {
        return solid.placed(placement(), label());
    }

    /** The solid where it stands in a pose, in assembly coordinates. */
    public Solid inPlace(Pose pose) {
        return solid.placed(placement(pose), label());
    }

    /** Of the solid where it belongs, in assembly coordinates. */
    public MassProperties massProperties() {
        return solid.massProperties(material().density()).placed(placement());
    }

    /** kg, of the volume that the features leave. */
    public double mass() {
        return massProperties().mass();
    }
}
