package org.standwright.packet.words;

import java.util.Set;
import java.util.stream.Collectors;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.design.Mount;
import org.standwright.design.built.Stand;

/**
 * The pieces that wait until the openings of the finished carcass are measured: drawer boxes, their bottoms and inset
 * fronts. Overlay fronts do not wait: they are set on the carcass, not into it. Common practice, no source.
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
        return new SecondStage(stand.assembly().groups().stream()
                .filter(group -> group.moves())
                .flatMap(group -> group.parts().stream()
                        .map(part -> part.label())
                        .filter(label -> inset || !label.equals(group.name() + " front")))
                .collect(Collectors.toUnmodifiableSet()));
    }

    public boolean holds(CutLine line) {
        return parts.containsAll(line.members());
    }

    /** Labels of the lines that wait. */
    public Set<String> labels(CutList cutList) {
        return cutList.lines().stream().filter(this::holds).map(CutLine::label).collect(Collectors.toUnmodifiableSet());
    }
}
