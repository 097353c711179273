package org.standwright.solid;

import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.standwright.part.Part;
import org.standwright.solid.Footprints.Cut;

/**
 * The volume of a machined board by plane areas at each height, united by JTS on the 1/1024 mm grid. Between two
 * neighbouring depths a feature that goes straight down takes its whole footprint or nothing, so their sum is exact.
 * What slopes takes a section that changes with height; what of it is not gone already is integrated by Simpson's rule,
 * halving until it holds.
 */
final class LayeredVolume {
    /** Of one layer of what slopes, mm³. */
    private static final double CLOSE = 0.01;

    private static final int HALVINGS = 14;

    private final Footprints footprints;

    private LayeredVolume(Footprints footprints) {
        this.footprints = footprints;
    }

    /** mm³. */
    static double of(Part part) {
        return new LayeredVolume(new Footprints(part, true)).volume();
    }

    /** As the features say it, off the grid; round things within a thousandth of a millimetre. */
    static double exact(Part part) {
        return new LayeredVolume(new Footprints(part, false, 0.001)).volume();
    }

    private double volume() {
        double volume = footprints.blank().getArea() * footprints.thickness();
        for (var cluster : GridClusters.of(footprints.cuts(), Cut::around)) {
            volume -= straight(cluster);
        }
        for (var cluster : GridClusters.of(footprints.sloped(), Sloped::around)) {
            volume -= sloping(cluster);
        }
        return volume;
    }

    /** What footprints that touch no others take. */
    private double straight(List<Cut> cuts) {
        double taken = 0;
        double low = 0;
        for (double high : heights(levels(cuts))) {
            taken += (high - low) * within(united(at(cuts, (low + high) / 2))).getArea();
            low = high;
        }
        return taken;
    }

    /** What sloping cuts that touch no others take beyond what is gone straight down. */
    private double sloping(List<Sloped> cuts) {
        var around = new Envelope();
        cuts.forEach(cut -> around.expandToInclude(cut.around()));
        var others = footprints.cuts().stream()
                .filter(cut -> cut.around().intersects(around))
                .toList();
        double taken = 0;
        double low = 0;
        for (double high :
                heights(DoubleStream.concat(levels(others), cuts.stream().flatMapToDouble(Sloped::heights)))) {
            taken += layer(cuts, at(others, (low + high) / 2), around, low, high);
            low = high;
        }
        return taken;
    }

    private double layer(List<Sloped> cuts, List<Geometry> gone, Envelope around, double low, double high) {
        var here = cuts.stream()
                .filter(cut -> cut.low() <= low && high <= cut.high())
                .toList();
        if (here.isEmpty()) {
            return 0;
        }
        var left = overlay(within(Footprints.FACTORY.toGeometry(around)), united(gone), OverlayNG.DIFFERENCE);
        return integral(height -> sections(here, height, left), low, high);
    }

    private static double sections(List<Sloped> cuts, double height, Geometry left) {
        var united = united(cuts.stream().map(cut -> cut.at(height)).toList());
        return left.isRectangle() && left.getEnvelopeInternal().covers(united.getEnvelopeInternal())
                ? united.getArea()
                : overlay(united, left, OverlayNG.INTERSECTION).getArea();
    }

    private static boolean isRectangle(Geometry area) {
        return area.getNumGeometries() == 1 && area.getGeometryN(0).isRectangle();
    }

    /** What of an area the board had before any feature. */
    private Geometry within(Geometry area) {
        var blank = footprints.blank();
        return blank.isRectangle() && blank.getEnvelopeInternal().covers(area.getEnvelopeInternal())
                ? area
                : overlay(blank, area, OverlayNG.INTERSECTION);
    }

    /** The areas of an overlay, without the lines and points in which its operands touch. */
    private static Geometry overlay(Geometry a, Geometry b, int operation) {
        var areas = PolygonExtracter.getPolygons(OverlayNGRobust.overlay(a, b, operation));
        return Footprints.FACTORY.createMultiPolygon(GeometryFactory.toPolygonArray(areas));
    }

    private static List<Geometry> at(List<Cut> cuts, double height) {
        return cuts.stream()
                .filter(cut -> cut.low() < height && height < cut.high())
                .map(Cut::footprint)
                .toList();
    }

    private static Geometry united(List<Geometry> areas) {
        if (areas.isEmpty()) {
            return Footprints.FACTORY.createPolygon();
        }
        return areas.size() == 1 ? areas.get(0) : OverlayNGRobust.union(areas, Footprints.FACTORY);
    }

    private static DoubleStream levels(List<Cut> cuts) {
        return cuts.stream().flatMapToDouble(cut -> DoubleStream.of(cut.low(), cut.high()));
    }

    /** Rising from the bench to the show face, without the bench itself. */
    private Iterable<Double> heights(DoubleStream any) {
        var heights = new TreeSet<Double>();
        heights.add(footprints.thickness());
        any.forEach(height -> heights.add(Math.max(0, Math.min(height, footprints.thickness()))));
        return heights.tailSet(0.0, false);
    }

    private static double integral(DoubleUnaryOperator area, double low, double high) {
        double middle = (low + high) / 2;
        double a = area.applyAsDouble(low);
        double m = area.applyAsDouble(middle);
        double b = area.applyAsDouble(high);
        return halved(area, low, high, a, m, b, CLOSE, HALVINGS);
    }

    private static double halved(
            DoubleUnaryOperator area, double low, double high, double a, double m, double b, double close, int left) {
        double middle = (low + high) / 2;
        double lower = area.applyAsDouble((low + middle) / 2);
        double upper = area.applyAsDouble((middle + high) / 2);
        double whole = (high - low) / 6 * (a + 4 * m + b);
        double halves = (high - low) / 12 * (a + 4 * lower + 2 * m + 4 * upper + b);
        if (left == 0 || Math.abs(whole - halves) < close) {
            return halves;
        }
        return halved(area, low, middle, a, lower, m, close / 2, left - 1)
                + halved(area, middle, high, m, upper, b, close / 2, left - 1);
    }
}
