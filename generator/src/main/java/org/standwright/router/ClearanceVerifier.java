package org.standwright.router;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.standwright.geom.Grid;
import org.standwright.geom.Outline;

/** Judges whether the bit gets round every part of a board: the outlines are far enough from each other and the edges. */
final class ClearanceVerifier {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final RoutedSheet sheet;
    private final double spacing;
    private final List<String> faults = new ArrayList<>();

    private ClearanceVerifier(RoutedSheet sheet, double spacing) {
        this.sheet = sheet;
        this.spacing = spacing;
    }

    /** @param spacing clear distance that is asked, mm */
    static List<String> faults(RoutedSheet sheet, double spacing) {
        var verifier = new ClearanceVerifier(sheet, spacing);
        var shapes =
                sheet.pieces().stream().map(piece -> polygon(piece.outline())).toList();
        verifier.checkInside(shapes);
        verifier.checkApart(shapes);
        return verifier.faults;
    }

    private void checkInside(List<Polygon> shapes) {
        var from = sheet.from();
        for (int i = 0; i < shapes.size(); i++) {
            var around = shapes.get(i).getEnvelopeInternal();
            double nearest = Math.min(
                    Math.min(around.getMinX(), from.length() - around.getMaxX()),
                    Math.min(around.getMinY(), from.width() - around.getMaxY()));
            if (Grid.less(nearest, spacing)) {
                faults.add(String.format(
                        Locale.ROOT,
                        "piece '%s' is %.3f mm from the edge, less than %.3f mm.",
                        label(i),
                        nearest,
                        spacing));
            }
        }
    }

    private void checkApart(List<Polygon> shapes) {
        var near = new STRtree();
        for (int i = 0; i < shapes.size(); i++) {
            near.insert(shapes.get(i).getEnvelopeInternal(), i);
        }
        for (int i = 0; i < shapes.size(); i++) {
            var around = new Envelope(shapes.get(i).getEnvelopeInternal());
            around.expandBy(spacing);
            for (Object other : near.query(around)) {
                int j = (int) other;
                if (j > i) {
                    checkApart(i, j, shapes.get(i).distance(shapes.get(j)));
                }
            }
        }
    }

    private void checkApart(int i, int j, double distance) {
        if (Grid.less(distance, spacing)) {
            faults.add(String.format(
                    Locale.ROOT,
                    "pieces '%s' and '%s' are %.3f mm apart, less than %.3f mm.",
                    label(i),
                    label(j),
                    distance,
                    spacing));
        }
    }

    private String label(int piece) {
        return sheet.pieces().get(piece).label();
    }

    private static Polygon polygon(Outline outline) {
        var corners = outline.corners();
        return FACTORY.createPolygon(Stream.concat(corners.stream(), Stream.of(corners.get(0)))
                .map(corner -> new Coordinate(corner.x(), corner.y()))
                .toArray(Coordinate[]::new));
    }
}
