package org.standwright.check.fastener;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import org.standwright.geom.Grid;

/**
 * Wood screws with a cut thread: sizes of NDS Appendix L3, as quoted. Construction screws differ from them and have
 * reports of their own.
 */
public enum NumberedScrew implements Fastener {
    NO_6(0.138, 0.113, 0.262),
    NO_8(0.164, 0.131, 0.312),
    NO_10(0.190, 0.152, 0.363),
    NO_12(0.216, 0.171, 0.414),
    NO_14(0.242, 0.196, 0.480);

    private final double diameter;
    private final double root;
    private final double head;

    NumberedScrew(double diameter, double root, double head) {
        this.diameter = diameter;
        this.root = root;
        this.head = head;
    }

    /** What a metric screw counts as: the largest size that is not thicker; none below #6. */
    public static Optional<NumberedScrew> largestWithin(double diameter) {
        return Arrays.stream(values())
                .filter(screw -> !Grid.less(diameter, screw.diameter()))
                .max(Comparator.naturalOrder());
    }

    @Override
    public FastenerKind kind() {
        return FastenerKind.WOOD_SCREW;
    }

    @Override
    public double diameter() {
        return diameter * Customary.INCH;
    }

    @Override
    public double root() {
        return root * Customary.INCH;
    }

    /** Diameter of the head, mm. */
    public double head() {
        return head * Customary.INCH;
    }

    @Override
    public double bendingYield() {
        return WireYield.of(diameter) * Customary.PSI;
    }

    /** Length of the thread, tip included: max(4 D, 2 L / 3) (NDS, as quoted), but no more than the screw, mm. */
    public double threadLength(double length) {
        return Math.min(length, Math.max(4 * diameter(), 2 * length / 3));
    }

    /** Thread beyond what the screw first goes through, tip included, mm; 0 when it does not reach so far. */
    public double threadBeyond(double length, double through) {
        return Math.max(0, Math.min(threadLength(length), length - through));
    }
}
