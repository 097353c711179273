package org.standwright.part;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.geom.Require;

/**
 * One flat board at its finished size, with all that is machined into it. Frame: see the package.
 *
 * @param name what it is ('side', 'drawer bottom'); parts of one name and shape are one line of the cut list
 * @param length along the grain, mm
 * @param width across the grain, mm
 * @param oversize left on every edge when it is cut and trimmed off after assembly, mm
 */
public record Part(
        String name, Material material, double length, double width, double oversize, List<Feature> features) {
    public Part {
        Require.named("part", name);
        Require.positive("length", length, name);
        Require.positive("width", width, name);
        Require.notNegative("oversize", oversize, name);
        features = List.copyOf(features);
        var inside = new WithinBlank(name, length, width, material.thickness());
        features.forEach(feature -> feature.accept(inside));
    }

    /** A board cut to its finished size, nothing machined yet. */
    public static Part blank(String name, Material material, double length, double width) {
        return new Part(name, material, length, width, 0, List.of());
    }

    public Part with(Feature... more) {
        return with(List.of(more));
    }

    public Part with(List<? extends Feature> more) {
        var all = Stream.<Feature>concat(features.stream(), more.stream()).toList();
        return new Part(name, material, length, width, oversize, all);
    }

    /** The same part, cut larger by {@code edge} on every edge and trimmed flush later. */
    public Part cutOver(double edge) {
        return new Part(name, material, length, width, edge, features);
    }

    public double thickness() {
        return material.thickness();
    }

    /** Length as it leaves the saw, mm. */
    public double cutLength() {
        return length + 2 * oversize;
    }

    /** Width as it leaves the saw, mm. */
    public double cutWidth() {
        return width + 2 * oversize;
    }
}
