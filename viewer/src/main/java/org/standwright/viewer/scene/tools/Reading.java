package org.standwright.viewer.scene.tools;

import java.util.List;
import java.util.Optional;
import org.standwright.unit.Units;
import org.standwright.viewer.scene.measure.Face;
import org.standwright.viewer.scene.measure.Measure;
import org.standwright.viewer.scene.measure.Measured;

/**
 * Faces that were clicked, none to two, where they stand.
 *
 * @param measured between two, or of one round one
 */
record Reading(List<Face> faces, Optional<Measured> measured) {
    static final Reading NOTHING = Reading.of(List.of());

    static Reading of(List<Face> faces) {
        var measured = switch (faces.size()) {
            case 0 -> Optional.<Measured>empty();
            case 1 -> Measure.of(faces.get(0));
            default -> Optional.of(Measure.between(faces.get(0), faces.get(1)));
        };
        return new Reading(List.copyOf(faces), measured);
    }

    /** What it tells, or what to do next. */
    String words(Units units) {
        return measured.map(known -> known.words(units))
                .orElse(faces.isEmpty() ? "Click a face of a board." : "Click a second face.");
    }
}
