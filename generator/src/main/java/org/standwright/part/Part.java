package org.standwright.part;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.geom.Require;

/**
 * One flat board at its finished size, with all that is machined into it. Frame: see the package.
 *
 * <p>Three sizes: the rough blank is what leaves the sheet, the cut size what the edges' bands go on, the finished size
 * what is built in. The features and the frame are those of the finished part.
 *
 * @param name what it is ('side', 'drawer bottom'); parts of one name and shape are one line of the cut list
 * @param length along the grain, finished, mm
 * @param width across the grain, finished, mm
 * @param oversize left on every edge of the rough blank and trimmed off later, mm
 * @param bands that cover its edges
 */
public record Part(
        String name,
        Material material,
        double length,
        double width,
        double oversize,
        Bands bands,
        List<Feature> features) {
    public Part {
        Require.named("part", name);
        Require.positive("length", length, name);
        Require.positive("width", width, name);
        Require.notNegative("oversize", oversize, name);
        Require.positive("cut length", length - bands.alongX(), name);
        Require.positive("cut width", width - bands.alongY(), name);
        features = List.copyOf(features);
        var inside = new WithinBlank(name, length, width, material.thickness());
        features.forEach(feature -> feature.accept(inside));
        if (features.stream().filter(Contour.class::isInstance).count() > 1) {
            throw new IllegalArgumentException("'" + name + "' has two contours; cut it to one outline.");
        }
    }

    /** A board cut to its finished size, nothing machined yet. */
    public static Part blank(String name, Material material, double length, double width) {
        return new Part(name, material, length, width, 0, Bands.NONE, List.of());
    }

    public Part with(Feature... more) {
        return with(List.of(more));
    }

    public Part with(List<? extends Feature> more) {
        var all = Stream.<Feature>concat(features.stream(), more.stream()).toList();
        return new Part(name, material, length, width, oversize, bands, all);
    }

    /** The same part, cut larger by {@code edge} on every edge and trimmed flush later. */
    public Part cutOver(double edge) {
        return new Part(name, material, length, width, edge, bands, features);
    }

    /** The same finished part with its edges covered: it is cut that much smaller. */
    public Part banded(Bands covers) {
        return new Part(name, material, length, width, oversize, covers, features);
    }

    /** The outline that it is cut to, if it is no rectangle. */
    public Optional<Contour> contour() {
        for (var feature : features) {
            if (feature instanceof Contour contour) {
                return Optional.of(contour);
            }
        }
        return Optional.empty();
    }

    public double thickness() {
        return material.thickness();
    }

    /** Length before its edges are covered, mm. */
    public double cutLength() {
        return length - bands.alongX();
    }

    /** Width before its edges are covered, mm. */
    public double cutWidth() {
        return width - bands.alongY();
    }

    /** Length as it leaves the sheet, mm. */
    public double roughLength() {
        return cutLength() + 2 * oversize;
    }

    /** Width as it leaves the sheet, mm. */
    public double roughWidth() {
        return cutWidth() + 2 * oversize;
    }
}
