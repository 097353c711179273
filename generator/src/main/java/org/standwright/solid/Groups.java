package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;

/** Tools sorted into groups in which no two can meet, so that each group is cut in one go. */
final class Groups {
    private Groups() {}

    /** Each tool joins the first group in which its box touches no other. */
    static List<List<Prism>> of(List<Prism> tools) {
        var groups = new ArrayList<List<Prism>>();
        for (var tool : tools) {
            groups.stream()
                    .filter(group -> group.stream().noneMatch(tool::boxTouches))
                    .findFirst()
                    .orElseGet(() -> {
                        var fresh = new ArrayList<Prism>();
                        groups.add(fresh);
                        return fresh;
                    })
                    .add(tool);
        }
        return groups;
    }
}
