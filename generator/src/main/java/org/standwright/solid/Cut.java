package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;

/** All that the tools of one feature sweep out; there is one at least. */
record Cut(List<Tool> tools) {
    Cut {
        tools = List.copyOf(tools);
    }

    Cut(Tool tool) {
        this(List.of(tool));
    }

    /** This cut and another in one. */
    Cut with(Cut other) {
        var both = new ArrayList<>(tools);
        both.addAll(other.tools);
        return new Cut(both);
    }

    /** The box around all of it. */
    Extent extent() {
        return Extent.around(tools);
    }
}
