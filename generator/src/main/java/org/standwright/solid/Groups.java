package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;

/** Tools sorted into groups in which no two can meet, so that each group is cut in one go. */
final class Groups {
    private record Group(List<Tool> tools, List<Extent> extents) {
        boolean hasRoomFor(Extent extent) {
            return extents.stream().noneMatch(extent::touches);
        }
    }

    private Groups() {}

    /** Each tool joins the first group in which the box around it touches no other. */
    static List<List<Tool>> of(List<Tool> tools) {
        var groups = new ArrayList<Group>();
        for (var tool : tools) {
            var extent = tool.extent();
            var group = groups.stream()
                    .filter(g -> g.hasRoomFor(extent))
                    .findFirst()
                    .orElseGet(() -> open(groups));
            group.tools.add(tool);
            group.extents.add(extent);
        }
        return groups.stream().map(Group::tools).toList();
    }

    private static Group open(List<Group> groups) {
        var fresh = new Group(new ArrayList<>(), new ArrayList<>());
        groups.add(fresh);
        return fresh;
    }
}
