package org.standwright.cutlist;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.standwright.geom.Outline;
import org.standwright.part.Face;
import org.standwright.unit.Measure;
import org.standwright.unit.Units;

/** Sizes and places in words, as the machining notes say them. */
record SizeWords(Units units) {
    /** What a bore may differ from its printed size, mm. */
    private static final double WORTH_SAYING = 0.1;

    /** '18 mm'. */
    String length(double mm) {
        return units.length(mm);
    }

    /** '100 to 360'. */
    String span(double from, double to) {
        return units.bareLength(from) + " to " + units.bareLength(to);
    }

    /** '260 × 180 mm'. */
    String area(double width, double height) {
        return units.bareLength(width) + " \u00d7 " + units.length(height);
    }

    /** 'through' or '9 mm deep, show face'. */
    String depth(OptionalDouble depth, Face face) {
        return depth.isEmpty() ? "through" : units.length(depth.getAsDouble()) + " deep, " + face(face);
    }

    /** To 1/64 in, as drills come; one that such marks miss is said in millimetres too: drills come in both. */
    String bore(double diameter) {
        var drills = units == Units.MM ? Units.MM : Units.INCH_64;
        boolean missed = Math.abs(drills.shown(diameter) - diameter) > WORTH_SAYING;
        return "\u00d8 " + drills.length(diameter) + (missed ? " (" + Units.MM.length(diameter) + ")" : "");
    }

    /** 'corners (x, y) in turn: (0, 0), (600, 0), (600, 400) mm'. */
    String corners(Outline outline) {
        var corners = outline.corners().stream()
                .map(corner -> "(" + units.bareLength(corner.x()) + ", " + units.bareLength(corner.y()) + ")")
                .collect(Collectors.joining(", "));
        return "corners (x, y) in turn: " + corners + " " + units.unitOf(Measure.LENGTH);
    }

    /** '22.5°', to a hundredth. */
    static String degrees(double angle) {
        var rounded = BigDecimal.valueOf(angle).setScale(2, RoundingMode.HALF_UP);
        return rounded.stripTrailingZeros().toPlainString() + "\u00b0";
    }

    static String face(Face face) {
        return face == Face.BENCH ? "bench face" : "show face";
    }
}
