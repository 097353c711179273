package org.standwright.design.stand;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/**
 * The wood of a placed part as boxes: its blank, split round every box that a feature takes out of it. Holes in faces
 * and round corners stay filled, so that wood is never judged thinner than it is.
 */
public final class Cells {
    private Cells() {}

    public static List<Box3> of(PlacedPart placed) {
        var part = placed.part();
        var removed = new Removed(part);
        var cells = List.of(new Box3(Vec3.ZERO, new Vec3(part.length(), part.width(), part.thickness())));
        for (var feature : part.features()) {
            for (var box : feature.accept(removed)) {
                cells = cells.stream().flatMap(cell -> less(cell, box).stream()).toList();
            }
        }
        assert !cells.isEmpty() : part;
        return cells.stream()
                .map(cell -> Box3.between(
                        placed.placement().apply(cell.min()), placed.placement().apply(cell.max())))
                .toList();
    }

    /** How deep two parts reach into each other, mm; 0 or less when they only touch. */
    public static double penetration(List<Box3> a, List<Box3> b) {
        double deepest = Double.NEGATIVE_INFINITY;
        for (var one : a) {
            for (var other : b) {
                deepest = Math.max(deepest, one.overlap(other));
            }
        }
        return deepest;
    }

    /** What {@code box} leaves of a cell: slices below and above it along x, then y, then z. */
    private static List<Box3> less(Box3 cell, Box3 box) {
        if (cell.overlap(box) <= 1e-9) {
            return List.of(cell);
        }
        var slices = new ArrayList<Box3>();
        var low = cell.min();
        var high = cell.max();
        add(slices, low, new Vec3(box.min().x(), high.y(), high.z()));
        add(slices, new Vec3(box.max().x(), low.y(), low.z()), high);
        low = new Vec3(Math.max(low.x(), box.min().x()), low.y(), low.z());
        high = new Vec3(Math.min(high.x(), box.max().x()), high.y(), high.z());
        add(slices, low, new Vec3(high.x(), box.min().y(), high.z()));
        add(slices, new Vec3(low.x(), box.max().y(), low.z()), high);
        low = new Vec3(low.x(), Math.max(low.y(), box.min().y()), low.z());
        high = new Vec3(high.x(), Math.min(high.y(), box.max().y()), high.z());
        add(slices, low, new Vec3(high.x(), high.y(), box.min().z()));
        add(slices, new Vec3(low.x(), low.y(), box.max().z()), high);
        return slices;
    }

    private static void add(List<Box3> slices, Vec3 low, Vec3 high) {
        if (high.x() - low.x() > 1e-9 && high.y() - low.y() > 1e-9 && high.z() - low.z() > 1e-9) {
            slices.add(new Box3(low, high));
        }
    }
}
