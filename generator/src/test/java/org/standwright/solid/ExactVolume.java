package org.standwright.solid;

import org.standwright.geom.Vec3;
import org.standwright.solid.exact.Cone;
import org.standwright.solid.exact.ExactSolid;
import org.standwright.solid.exact.ExactSolid.Face;
import org.standwright.solid.exact.Plane;
import org.standwright.solid.exact.Round;

/**
 * The volume inside exact faces by the divergence theorem, each face's share by Green's theorem along its edges, and
 * those by Gauss and Legendre's rule of five points in short pieces (own derivation).
 */
final class ExactVolume {
    private static final double[] PLACES = {
        0.5, 0.230765344947158, 0.769234655052842, 0.046910077030668, 0.953089922969332
    };
    private static final double[] WEIGHTS = {
        0.284444444444444, 0.239314335249683, 0.239314335249683, 0.118463442528095, 0.118463442528095
    };

    private final ExactSolid solid;

    private ExactVolume(ExactSolid solid) {
        this.solid = solid;
    }

    /** mm³. */
    static double of(ExactSolid solid) {
        var volume = new ExactVolume(solid);
        return solid.shells().stream()
                .flatMap(shell -> shell.stream())
                .mapToDouble(volume::under)
                .sum();
    }

    /** A third of the flow of the place itself out through a face. */
    private double under(Face face) {
        double flow = 0;
        for (var loop : face.loops()) {
            for (var use : loop) {
                flow += (use.along() ? 1 : -1)
                        * along(face, new Along(solid, solid.edges().get(use.edge())));
            }
        }
        return flow / 3;
    }

    private static double along(Face face, Along edge) {
        double sum = 0;
        for (int piece = 0; piece < edge.pieces(); piece++) {
            for (int i = 0; i < PLACES.length; i++) {
                var place = edge.at(piece, PLACES[i]);
                sum += WEIGHTS[i] * rate(face, place.at(), place.way());
            }
        }
        return sum;
    }

    private static double rate(Face face, Vec3 at, Vec3 way) {
        if (face.surface() instanceof Plane plane) {
            return plane.offset() / 2 * plane.normal().dot(at.cross(way));
        }
        // seen from inside the hole, angles grow to the left while heights grow upwards: loops run clockwise in both
        var round = (Round) face.surface();
        double slope = round instanceof Cone cone ? Math.tan(cone.slope()) : 0;
        var arm = round.arm(at);
        double height = round.height(at);
        double turn = round.axis().dot(arm.cross(way)) / arm.dot(arm);
        double out = round.point().dot(arm.times(1 / arm.length()))
                + round.radiusAt(0)
                - round.point().dot(round.axis()) * slope;
        return -out * (round.radiusAt(0) * height + slope * height * height / 2) * turn;
    }
}
