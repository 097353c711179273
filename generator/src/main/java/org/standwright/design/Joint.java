package org.standwright.design;

import org.standwright.design.kit.Connector;
import org.standwright.design.kit.Dowel;

/** How the carcass's panels are joined. */
public sealed interface Joint {
    /** Dados and rabbets, glued. */
    record Housed() implements Joint {}

    /** Butted, with screws through the face of one panel into the edge of the other. */
    record Screwed() implements Joint {}

    /** Butted and glued, with dowels. */
    record Doweled(Dowel dowel) implements Joint {}

    /** Butted, with connecting screws that come apart again. */
    record Connected(Connector connector) implements Joint {}
}
