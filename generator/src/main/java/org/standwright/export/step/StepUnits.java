package org.standwright.export.step;

/** Lengths in millimetres, angles in radians, true to a millionth of a millimetre. */
final class StepUnits {
    private StepUnits() {}

    /** Number of the context that says so. */
    static int millimetres(StepText text) {
        int length = text.add("(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))");
        int angle = text.add("(NAMED_UNIT(*)PLANE_ANGLE_UNIT()SI_UNIT($,.RADIAN.))");
        int solid = text.add("(NAMED_UNIT(*)SI_UNIT($,.STERADIAN.)SOLID_ANGLE_UNIT())");
        int close = text.add("UNCERTAINTY_MEASURE_WITH_UNIT(LENGTH_MEASURE(1.E-6),#" + length
                + ",'distance_accuracy_value','points nearer than this are one')");
        return text.add("(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT((#" + close
                + "))GLOBAL_UNIT_ASSIGNED_CONTEXT((#" + length + ",#" + angle + ",#" + solid
                + "))REPRESENTATION_CONTEXT('','3D'))");
    }
}
