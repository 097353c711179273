package org.standwright.assembly;

import java.util.HashSet;
import java.util.List;
import org.standwright.geom.Box3;
import org.standwright.geom.Require;

/** A piece of furniture as groups of placed parts, with the hardware it needs. Labels of parts are unique. */
public record Assembly(String name, List<Group> groups, List<Hardware> hardware) {
    public Assembly {
        Require.named("assembly", name);
        groups = List.copyOf(groups);
        hardware = List.copyOf(hardware);
        var seen = new HashSet<String>();
        groups.stream().flatMap(group -> group.parts().stream()).forEach(part -> {
            if (!seen.add(part.label())) {
                throw new IllegalArgumentException("two parts of '" + name + "' are labelled '" + part.label() + "'.");
            }
        });
    }

    /** All parts, group by group. */
    public List<PlacedPart> parts() {
        return groups.stream().flatMap(group -> group.parts().stream()).toList();
    }

    /** All bought things that have a block, group by group. */
    public List<Block> blocks() {
        return groups.stream().flatMap(group -> group.blocks().stream()).toList();
    }

    /** The box around every part and block; throws if there are none. */
    public Box3 box() {
        var boxes = groups.stream().flatMap(Group::boxes).toList();
        if (boxes.isEmpty()) {
            throw new IllegalArgumentException("'" + name + "' has no parts, so no box is around it; give it one.");
        }
        return Box3.around(boxes);
    }
}
