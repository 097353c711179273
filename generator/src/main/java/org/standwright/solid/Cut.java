package org.standwright.solid;

import java.util.List;

/** All that the tools of one feature sweep out; there is one at least. */
record Cut(List<Tool> tools) {
    Cut {
        tools = List.copyOf(tools);
    }

    Cut(Tool tool) {
        this(List.of(tool));
    }

    Extent extent() {
        return tools.stream().map(Tool::extent).reduce(Extent::union).orElseThrow();
    }
}
