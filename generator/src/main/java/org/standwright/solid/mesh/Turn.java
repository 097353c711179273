package org.standwright.solid.mesh;

/** The angles at which triangles stand round one edge, counter-clockwise seen against its direction. */
final class Turn {
    private final HalfEdges mesh;
    private final int origin;
    private final double[] right;
    private final double[] ahead;

    /** Round half-edge {@code first}, whose triangle stands at angle 0. */
    Turn(HalfEdges mesh, int first) {
        this.mesh = mesh;
        origin = mesh.from(first);
        var axis = mesh.between(origin, mesh.to(first));
        ahead = cross(axis, mesh.between(origin, mesh.apex(first)));
        right = cross(ahead, axis);
    }

    /** From 0 to 2 pi. */
    double angle(int half) {
        var arm = mesh.between(origin, mesh.apex(half));
        double angle = StrictMath.atan2(dot(arm, ahead) * length(right), dot(arm, right) * length(ahead));
        return angle < 0 ? angle + 2 * Math.PI : angle;
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double length(double[] a) {
        return Math.sqrt(dot(a, a));
    }
}
