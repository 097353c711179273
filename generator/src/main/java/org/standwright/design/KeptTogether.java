package org.standwright.design;

import java.util.List;

/** Parts that leave the sheet as one block, in the order in which they follow each other. */
public sealed interface KeptTogether {
    /** Names of parts ('drawer side') or labels of single ones ('left side'). */
    List<String> parts();

    /** Side by side from one strip, so that the figure runs on. */
    record OneStrip(List<String> parts) implements KeptTogether {
        public OneStrip {
            parts = List.copyOf(parts);
        }
    }

    /** From one place of one sheet, so that colour and figure agree. */
    record OneSheet(List<String> parts) implements KeptTogether {
        public OneSheet {
            parts = List.copyOf(parts);
        }
    }

    /**
     * As one oversize blank that is large enough to be held, separated later.
     *
     * @param over left on every edge of the blank, mm
     */
    record OneBlank(List<String> parts, double over) implements KeptTogether {
        public OneBlank {
            parts = List.copyOf(parts);
        }
    }
}
