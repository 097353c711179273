package org.standwright.cutlist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standwright.assembly.PlacedPart;
import org.standwright.part.Material;
import org.standwright.unit.Units;

/** Placed parts to lines of the cut list: equal shapes merged, materials together, mirrored pairs under one letter. */
final class LineMerger {
    private final Units units;

    LineMerger(Units units) {
        this.units = units;
    }

    List<CutLine> lines(List<PlacedPart> parts) {
        var byShape = new LinkedHashMap<Shape, List<PlacedPart>>();
        for (var placed : parts) {
            byShape.computeIfAbsent(Shape.of(placed.part()), shape -> new ArrayList<>())
                    .add(placed);
        }
        var labels = labels(byShape);
        return labels.entrySet().stream()
                .map(entry -> line(entry.getValue(), byShape.get(entry.getKey())))
                .toList();
    }

    private CutLine line(String label, List<PlacedPart> equal) {
        var part = equal.get(0).part();
        return new CutLine(
                label,
                part,
                equal.stream().map(PlacedPart::label).toList(),
                new MachiningNotes(equal.get(0), units).lines());
    }

    /** Labels in the order of the list: by material as first used, then as first placed. */
    private static Map<Shape, String> labels(Map<Shape, List<PlacedPart>> byShape) {
        var materials = new ArrayList<Material>();
        byShape.keySet().stream().map(Shape::material).distinct().forEach(materials::add);
        var order = new ArrayList<>(byShape.keySet());
        order.sort(Comparator.comparingInt(shape -> materials.indexOf(shape.material())));
        var labels = new LinkedHashMap<Shape, String>();
        int letters = 0;
        for (var shape : order) {
            if (labels.containsKey(shape)) {
                continue;
            }
            var letter = letter(letters++);
            var mirror = Shape.mirrored(byShape.get(shape).get(0).part());
            if (!mirror.equals(shape) && byShape.containsKey(mirror)) {
                labels.put(shape, letter + "-L");
                labels.put(mirror, letter + "-R");
            } else {
                labels.put(shape, letter);
            }
        }
        return labels;
    }

    /** A to Z, then AA to AZ, BA … */
    private static String letter(int index) {
        var last = String.valueOf((char) ('A' + index % 26));
        return index < 26 ? last : letter(index / 26 - 1) + last;
    }
}
