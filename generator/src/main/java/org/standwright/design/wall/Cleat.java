package org.standwright.design.wall;

import java.util.OptionalDouble;
import org.standwright.geom.Require;
import org.standwright.part.BevelRip;
import org.standwright.part.SheetGood;

/**
 * The section that strips on the wall and hangers share: sawn in two from one board by one tilted rip, then the sharp tips
 * taken off.
 *
 * <p>A strip hangs with its long face to the room, so that its bevel and the wall make a groove that opens upwards. Its
 * high edge is where bevel and blunted tip meet; all heights of rows are those of this edge. A hanger lies in the same
 * plane, upside down, its long face to the wall.
 *
 * @param face width of the long face as sawn, before the tip is taken off, mm
 * @param tilt of the saw from square, degrees
 * @param blunt taken off the sharp tip, mm
 * @param longest length of a strip, mm; empty for as long as its sheets give
 */
public record Cleat(SheetGood sheet, double face, double tilt, double blunt, OptionalDouble longest) {
    /** Beyond what the bevel asks, so that a hanger goes in easily, mm (common practice, no source). */
    public static final double EASE = 3;

    public Cleat {
        Require.positive("face", face, "cleat");
        Require.notNegative("blunted tip", blunt, "cleat");
        if (!(tilt > 0 && tilt < 90)) {
            throw new IllegalArgumentException("tilt of a cleat is " + tilt + "°, but must lie between 0 and 90.");
        }
        Require.positive("short face of a cleat", face - thickness(sheet) * tan(tilt), "cleat");
    }

    public double thickness() {
        return thickness(sheet);
    }

    /** How much higher a bevel is at its one face than at the other: t tan(tilt), mm. */
    public double rise() {
        return thickness() * tan(tilt);
    }

    /** Width of the short face as sawn, mm. */
    public double shortFace() {
        return face - rise();
    }

    /** Height of a strip on the wall, its tip taken off, mm. */
    public double height() {
        return face - blunt;
    }

    /** How deep the bevel goes from the short face; what is left of the thickness is the blunted tip, mm. */
    public double bevelDepth() {
        return thickness() - blunt / tan(tilt);
    }

    /** How far a hanger is lifted to come free, with some ease: rise + 3 mm. */
    public double headroom() {
        return rise() + EASE;
    }

    /** From the high edge of a strip up to the top of the hanger that sits on it, mm. */
    public double hangerAbove() {
        return blunt + shortFace();
    }

    /** The closest pitch of rows that a hanger still gets in between: long face + short face + rise + 3 mm. */
    public double densestPitch() {
        return face + shortFace() + headroom();
    }

    /**
     * Width of the board that gives two of them: 2 L - t tan(tilt) + k / cos(tilt), mm; see {@link BevelRip}.
     *
     * @param kerf of the saw, mm
     */
    public double board(double kerf) {
        return 2 * face - rise() + kerf / StrictMath.cos(StrictMath.toRadians(tilt));
    }

    private static double thickness(SheetGood sheet) {
        return sheet.material().thickness();
    }

    private static double tan(double degrees) {
        return StrictMath.tan(StrictMath.toRadians(degrees));
    }
}
