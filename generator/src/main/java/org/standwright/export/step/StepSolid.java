package org.standwright.export.step;

import java.util.ArrayList;
import java.util.List;
import org.standwright.geom.Vec3;
import org.standwright.solid.exact.Cone;
import org.standwright.solid.exact.Curve;
import org.standwright.solid.exact.Cylinder;
import org.standwright.solid.exact.ExactSolid;
import org.standwright.solid.exact.ExactSolid.Edge;
import org.standwright.solid.exact.ExactSolid.Face;
import org.standwright.solid.exact.ExactSolid.Use;
import org.standwright.solid.exact.Plane;
import org.standwright.solid.exact.Round;
import org.standwright.solid.exact.Surface;

/** An exact solid as topology and geometry of ISO 10303-42: a manifold solid for each of its shells. */
final class StepSolid {
    private final StepText text;
    private final ExactSolid solid;
    private final int[] corners;
    private final int[] edges;

    private StepSolid(StepText text, ExactSolid solid) {
        this.text = text;
        this.solid = solid;
        this.corners = new int[solid.corners().size()];
        this.edges = new int[solid.edges().size()];
    }

    /** Numbers of the solids, all of one name. */
    static List<Integer> write(StepText text, ExactSolid solid, String name) {
        var writer = new StepSolid(text, solid);
        var solids = new ArrayList<Integer>();
        for (var shell : solid.shells()) {
            var faces = shell.stream().map(writer::face).toList();
            int closed = text.add("CLOSED_SHELL(''," + StepText.list(faces) + ")");
            solids.add(text.add("MANIFOLD_SOLID_BREP(" + StepString.of(name) + ",#" + closed + ")"));
        }
        return solids;
    }

    private int face(Face face) {
        var bounds = new ArrayList<Integer>();
        for (var loop : face.loops()) {
            var uses = loop.stream().map(this::use).toList();
            int edgeLoop = text.add("EDGE_LOOP(''," + StepText.list(uses) + ")");
            var kind = bounds.isEmpty() ? "FACE_OUTER_BOUND" : "FACE_BOUND";
            bounds.add(text.add(kind + "('',#" + edgeLoop + ",.T.)"));
        }
        int surface = surface(face.surface(), face.start());
        // a round surface's own normal points away from its axis, into the wood
        var sense = face.surface() instanceof Round ? ".F." : ".T.";
        return text.add("ADVANCED_FACE(''," + StepText.list(bounds) + ",#" + surface + "," + sense + ")");
    }

    private int surface(Surface surface, Vec3 start) {
        if (surface instanceof Plane plane) {
            var at = plane.normal().times(plane.offset());
            return text.add("PLANE('',#" + text.frame(at, plane.normal(), square(plane.normal())) + ")");
        }
        if (surface instanceof Cone cone) {
            return text.add("CONICAL_SURFACE('',#" + text.frame(cone.point(), cone.axis(), start) + ","
                    + StepReal.of(cone.radius()) + "," + StepReal.of(cone.slope()) + ")");
        }
        var cylinder = (Cylinder) surface;
        return text.add("CYLINDRICAL_SURFACE('',#" + text.frame(cylinder.point(), cylinder.axis(), start) + ","
                + StepReal.of(cylinder.radius()) + ")");
    }

    /** Some direction square to another. */
    private static Vec3 square(Vec3 normal) {
        var other = Math.abs(normal.x()) < 0.5 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
        return other.minus(normal.times(normal.dot(other))).unit();
    }

    private int use(Use use) {
        int edge = edge(use.edge());
        return text.add("ORIENTED_EDGE('',*,*,#" + edge + "," + (use.along() ? ".T." : ".F.") + ")");
    }

    private int edge(int number) {
        if (edges[number] == 0) {
            var edge = solid.edges().get(number);
            int from = corner(edge.from());
            int to = corner(edge.to());
            edges[number] = text.add("EDGE_CURVE('',#" + from + ",#" + to + ",#" + curve(edge) + ",.T.)");
        }
        return edges[number];
    }

    private int corner(int number) {
        if (corners[number] == 0) {
            int point = text.point(solid.corners().get(number));
            corners[number] = text.add("VERTEX_POINT('',#" + point + ")");
        }
        return corners[number];
    }

    private int curve(Edge edge) {
        var curve = edge.curve();
        if (curve instanceof Curve.Line line) {
            int along = text.share("VECTOR('',#" + text.direction(line.direction()) + ",1.)");
            return text.add("LINE('',#" + text.point(line.point()) + ",#" + along + ")");
        }
        if (curve instanceof Curve.Circle circle) {
            int frame = text.frame(circle.centre(), circle.axis(), circle.start());
            return text.add("CIRCLE('',#" + frame + "," + StepReal.of(circle.radius()) + ")");
        }
        if (curve instanceof Curve.Ellipse ellipse) {
            int frame = text.frame(ellipse.centre(), ellipse.axis(), ellipse.major());
            return text.add("ELLIPSE('',#" + frame + "," + StepReal.of(ellipse.majorRadius()) + ","
                    + StepReal.of(ellipse.minorRadius()) + ")");
        }
        return spline((Curve.Spline) curve);
    }

    private int spline(Curve.Spline spline) {
        var poles = spline.poles().stream().map(text::point).toList();
        var repeats = new StringBuilder();
        var knots = new StringBuilder();
        for (int i = 0; i < spline.knots().size(); i++) {
            boolean end = i == 0 || i == spline.knots().size() - 1;
            repeats.append(i == 0 ? "" : ",").append(end ? 4 : 2);
            knots.append(i == 0 ? "" : ",").append(StepReal.of(spline.knots().get(i)));
        }
        return text.add("B_SPLINE_CURVE_WITH_KNOTS('',3," + StepText.list(poles) + ",.UNSPECIFIED.,.F.,.F.,(" + repeats
                + "),(" + knots + "),.UNSPECIFIED.)");
    }
}
