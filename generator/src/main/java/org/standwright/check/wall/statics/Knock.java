package org.standwright.check.wall.statics;

import org.standwright.geom.Grid;
import org.standwright.unit.Gravity;

/**
 * What a knock from below must do to unhook a holder: lift its weight, friction left out, by the rise of its bevel.
 *
 * @param mass of the holder with what is in it, kg
 */
public record Knock(double mass, Height height, CleatBevel bevel) {
    /** Where the holder hangs. */
    public enum Height {
        WITHIN_REACH,
        OVERHEAD
    }

    /** What may hang loose, kg: common practice, no source. */
    private static final double LOOSE = 5;

    public Knock {
        Given.positive("mass of the holder", mass, "kg");
    }

    /** Upward, N. */
    public double force() {
        return Gravity.newtons(mass);
    }

    /** How far up before it is free, which is also the headroom for lifting it off, mm. */
    public double travel() {
        return bevel.rise();
    }

    /** Whether it needs a stop or a screw: above 5 kg, and overhead whatever its mass. */
    public boolean needsStop() {
        return height == Height.OVERHEAD || Grid.less(LOOSE, mass);
    }
}
