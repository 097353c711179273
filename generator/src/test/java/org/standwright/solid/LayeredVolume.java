package org.standwright.solid;

import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.standwright.part.Part;
import org.standwright.solid.Footprints.Bore;
import org.standwright.solid.Footprints.Cut;

/**
 * The volume of a machined board by plane areas at each height, united by JTS on the 1/1024 mm grid. Between two
 * neighbouring depths a feature of a face takes its whole footprint or nothing. A bore from an edge takes a rectangle
 * that grows and shrinks with its section; there the areas are integrated by Simpson's rule, halving until it holds.
 */
final class LayeredVolume {
    /** Of one layer with bores in it, mm³. */
    private static final double CLOSE = 0.01;

    private static final int HALVINGS = 14;

    private final Footprints footprints;

    private LayeredVolume(Part part) {
        footprints = new Footprints(part, true);
    }

    /** mm³. */
    static double of(Part part) {
        return new LayeredVolume(part).volume();
    }

    private TreeSet<Double> heights() {
        var heights = new TreeSet<>(List.of(0.0, footprints.thickness()));
        footprints.cuts().forEach(cut -> heights.addAll(List.of(cut.low(), cut.high())));
        for (var bore : footprints.bores()) {
            for (var corner : bore.section()) {
                heights.add(Math.max(0, Math.min(corner.y, footprints.thickness())));
            }
        }
        return heights;
    }

    private double volume() {
        double volume = 0;
        double low = 0;
        for (double high : heights().tailSet(0.0, false)) {
            volume += layer(low, high);
            low = high;
        }
        return volume;
    }

    private double layer(double low, double high) {
        double middle = (low + high) / 2;
        var taken = footprints.cuts().stream()
                .filter(cut -> cut.low() < middle && middle < cut.high())
                .map(Cut::footprint)
                .toList();
        var bores = footprints.bores().stream()
                .filter(bore -> bore.low() < middle && middle < bore.high())
                .toList();
        if (bores.isEmpty()) {
            return (high - low) * area(taken);
        }
        return integral(height -> area(taken, bores, height), low, high);
    }

    private double area(List<Geometry> taken, List<Bore> bores, double height) {
        return area(Stream.concat(taken.stream(), bores.stream().map(bore -> bore.at(height)))
                .toList());
    }

    private double area(List<Geometry> taken) {
        if (taken.isEmpty()) {
            return footprints.blank().getArea();
        }
        var united = OverlayNGRobust.union(Footprints.FACTORY.buildGeometry(taken));
        return OverlayNGRobust.overlay(footprints.blank(), united, OverlayNG.DIFFERENCE)
                .getArea();
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
