package org.standwright.design.built;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.Mount;

/**
 * The parts that wait until the openings of the finished carcass are measured: drawer boxes, their bottoms and inset
 * fronts and doors. Overlay fronts do not wait: they are set on the carcass, not into it. Common practice, no source.
 */
final class LaterParts {
    private LaterParts() {}

    /** Labels of the placed parts that wait. */
    static Set<String> of(Stand stand) {
        boolean inset = stand.design().drawers().mount() == Mount.INSET;
        var fronts = fronts(stand);
        var inserted = inset ? fronts : Set.<String>of();
        var boxes = stand.assembly().groups().stream()
                .filter(group -> group.moves())
                .flatMap(group -> group.parts().stream())
                .map(PlacedPart::label)
                .filter(label -> !fronts.contains(label));
        return Stream.concat(boxes, inserted.stream()).collect(Collectors.toUnmodifiableSet());
    }

    /** Labels of the panels that are seen of drawers and doors. */
    private static Set<String> fronts(Stand stand) {
        var drawers = stand.bays().stream()
                .flatMap(bay -> bay.drawers().stream())
                .map(drawer -> "drawer " + drawer.name() + " front");
        var doors = stand.bays().stream().flatMap(bay -> bay.doors().stream()).map(door -> "door " + door.name());
        return Stream.concat(drawers, doors).collect(Collectors.toUnmodifiableSet());
    }
}
