package org.standwright.packet.words;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.design.Mount;
import org.standwright.design.built.Stand;

/**
 * The pieces that wait until the openings of the finished carcass are measured: drawer boxes, their bottoms and inset
 * fronts and doors. Overlay fronts do not wait: they are set on the carcass, not into it. Common practice, no source.
 */
public final class SecondStage {
    /** What stands beside a line or piece that waits. */
    public static final String MARK = "stage 2: cut after the opening is measured";

    private final Set<String> parts;

    private SecondStage(Set<String> parts) {
        this.parts = parts;
    }

    public static SecondStage of(Stand stand) {
        boolean inset = stand.design().drawers().mount() == Mount.INSET;
        var fronts = fronts(stand);
        var inserted = inset ? fronts : Set.<String>of();
        var boxes = stand.assembly().groups().stream()
                .filter(group -> group.moves())
                .flatMap(group -> group.parts().stream())
                .map(part -> part.label())
                .filter(label -> !fronts.contains(label));
        return new SecondStage(Stream.concat(boxes, inserted.stream()).collect(Collectors.toUnmodifiableSet()));
    }

    /** Labels of the panels that are seen of drawers and doors. */
    private static Set<String> fronts(Stand stand) {
        var drawers = stand.bays().stream()
                .flatMap(bay -> bay.drawers().stream())
                .map(drawer -> "drawer " + drawer.name() + " front");
        var doors = stand.bays().stream().flatMap(bay -> bay.doors().stream()).map(door -> "door " + door.name());
        return Stream.concat(drawers, doors).collect(Collectors.toUnmodifiableSet());
    }

    public boolean holds(CutLine line) {
        return parts.containsAll(line.members());
    }

    /** Labels of the lines that wait. */
    public Set<String> labels(CutList cutList) {
        return cutList.lines().stream().filter(this::holds).map(CutLine::label).collect(Collectors.toUnmodifiableSet());
    }
}
