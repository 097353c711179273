package org.standwright.packet.words;

import java.util.Set;
import java.util.stream.Collectors;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.design.built.Furniture;

/** What is said of the pieces that wait until what they go into was built and measured. */
public final class SecondStage {
    /** What stands beside a line or piece that waits. */
    public static final String MARK = "stage 2: cut after the opening is measured";

    private final Set<String> parts;

    private SecondStage(Set<String> parts) {
        this.parts = parts;
    }

    public static SecondStage of(Furniture furniture) {
        return new SecondStage(furniture.later());
    }

    public boolean holds(CutLine line) {
        return parts.containsAll(line.members());
    }

    /** Labels of the lines that wait. */
    public Set<String> labels(CutList cutList) {
        return cutList.lines().stream().filter(this::holds).map(CutLine::label).collect(Collectors.toUnmodifiableSet());
    }
}
