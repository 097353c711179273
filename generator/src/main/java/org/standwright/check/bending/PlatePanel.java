package org.standwright.check.bending;

import org.standwright.geom.Grid;
import org.standwright.geom.Require;

/**
 * A board on supports along all four edges that is stiffer along its grain than across it.
 *
 * <p>Rule of thumb, on the safe side of an orthotropic plate: longer than twice its short side it is a strip across the
 * short side with the modulus of that direction; otherwise a plate of the smaller of both moduli.
 *
 * @param overX side along x, mm
 * @param overY side along y, mm
 * @param thickness mm
 * @param modulusX along x, N/mm²
 * @param modulusY along y, N/mm²
 */
public record PlatePanel(double overX, double overY, double thickness, double modulusX, double modulusY) {
    /** Ratio of the sides beyond which the long one no longer helps. */
    private static final double STRIP = 2;

    public PlatePanel {
        Require.positive("side", overX, "panel");
        Require.positive("side", overY, "panel");
        Require.positive("thickness", thickness, "panel");
        Require.positive("modulus", Math.min(modulusX, modulusY), "panel");
    }

    public double shorter() {
        return Math.min(overX, overY);
    }

    public double longer() {
        return Math.max(overX, overY);
    }

    public boolean isStrip() {
        return Grid.less(STRIP * shorter(), longer());
    }

    /** The modulus that counts, N/mm². */
    public double modulus() {
        if (isStrip()) {
            return overX < overY ? modulusX : modulusY;
        }
        return Math.min(modulusX, modulusY);
    }

    /** Deflection of the middle under an even load, mm. */
    public double uniform(double pressure) {
        if (isStrip()) {
            double stiffness = Section.plank(1, thickness, modulus()).stiffness();
            return Beam.SIMPLE_UNIFORM.deflection(pressure * shorter(), shorter(), stiffness);
        }
        return plate().uniform(pressure);
    }

    /** Greatest bending stress under an even load, N/mm². */
    public double stress(double pressure) {
        if (isStrip()) {
            double moment = Beam.SIMPLE_UNIFORM.moment(pressure * shorter(), shorter());
            return Section.plank(1, thickness, modulus()).stress(moment);
        }
        return plate().stress(pressure);
    }

    /** Greatest reaction of an edge under an even load, N/mm. */
    public double reaction(double pressure) {
        return plate().reaction(pressure);
    }

    /** Whether a deflection is small enough for the theory of thin plates: up to half the thickness. */
    public boolean believes(double deflection) {
        return !Grid.less(thickness / 2, deflection);
    }

    private Plate plate() {
        return new Plate(longer(), shorter(), thickness, modulus());
    }
}
