package org.standwright.solid;

import org.standwright.assembly.PlacedPart;

/**
 * The solid of one part of an assembly.
 *
 * @param group that the part belongs to
 * @param solid in the part's own frame; parts of one workpiece share it
 */
public record PlacedSolid(String group, PlacedPart part, Solid solid) {
    private static final double CUBIC_METRES = 1e-9;

    public String label() {
        return part.label();
    }

    /** The solid where it belongs, in assembly coordinates, its shift rounded to the 1/1024 mm grid. */
    public Solid inPlace() {
        return solid.placed(part.placement(), part.label());
    }

    /** kg, of the volume that the features leave. */
    public double mass() {
        return solid.volume() * CUBIC_METRES * part.part().material().density();
    }
}
