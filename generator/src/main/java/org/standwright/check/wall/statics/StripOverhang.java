package org.standwright.check.wall.statics;

import org.standwright.check.bending.Beam;
import org.standwright.check.bending.Section;

/**
 * The end of a strip beyond its last screws, with a load at its very end.
 *
 * <p>The strip turns over the last stud and is held down by the one behind it: by the lever rule the last carries P (1 + c/s)
 * and the one behind is lifted with P c/s. Where the strip runs on over a third stud as far behind, that stiffens it and
 * makes it P (1 + 1.25 c/s); {@link StudShares} counts that.
 *
 * @param overhang c, from the last screw to the end, mm
 * @param backSpan s, from the last stud to the one behind it, mm
 * @param height of the strip where it is least, its short face, mm
 * @param thickness of the strip, mm
 * @param modulus E along the strip, N/mm²
 */
public record StripOverhang(double overhang, double backSpan, double height, double thickness, double modulus) {
    public StripOverhang {
        Given.notNegative("overhang of the strip", overhang, "mm");
        Given.positive("span behind the overhang", backSpan, "mm");
        Given.positive("height of the strip", height, "mm");
        Given.positive("thickness of the strip", thickness, "mm");
        Given.positive("modulus of the strip", modulus, "N/mm²");
    }

    /** What the last stud carries for each N at the end: 1 + c/s. */
    public double lastShare() {
        return 1 + liftShare();
    }

    /** What lifts the strip off the stud behind for each N at the end: c/s. */
    public double liftShare() {
        return overhang / backSpan;
    }

    /** Greatest bending stress, over the last stud, N/mm². */
    public double stress(double load) {
        return section().stress(Beam.CANTILEVER_END.moment(load, overhang));
    }

    /** How far the end sinks were it held fast at the last screw: P c³ / (3 E I), mm. */
    public double heldFast(double load) {
        return Beam.CANTILEVER_END.deflection(load, overhang, section().stiffness());
    }

    /** How far the end sinks, with the span behind turning over the last stud: P c² (c + s) / (3 E I), mm. */
    public double deflection(double load) {
        return load
                * overhang
                * overhang
                * (overhang + backSpan)
                / (3 * section().stiffness());
    }

    /** On edge: its thickness wide, its height deep. */
    private Section section() {
        return Section.plank(thickness, height, modulus);
    }
}
