package org.standwright.packet.words;

import org.standwright.sheet.Cut;
import org.standwright.sheet.SheetUnit;

/** What keeps a cut straight, and what its setting is set at. The limits are common practice, no source. */
public enum Guide {
    /** The saw's fence, along which the panel is pushed. */
    FENCE("fence"),
    /** Mitre gauge or sled with a stop block: the panel's edge is too short for the fence to keep it from turning. */
    SLED_AND_STOP("sled and stop"),
    /** Clamped to the panel for a hand-held saw. */
    STRAIGHTEDGE("straightedge");

    private static final int LEAST_CROSSCUT = 300 * SheetUnit.PER_MM;
    private static final int LEAST_RIP = 150 * SheetUnit.PER_MM;

    private final String words;

    Guide(String words) {
        this.words = words;
    }

    public static Guide of(Cut cut) {
        if (cut.tool() == Cut.Tool.BREAK_DOWN_SAW) {
            return STRAIGHTEDGE;
        }
        return wouldTurn(cut) ? SLED_AND_STOP : FENCE;
    }

    /** The panel lies on the fence for as long as the cut is. */
    private static boolean wouldTurn(Cut cut) {
        boolean endOn = cut.along() < cut.setting();
        return cut.direction() == Cut.Direction.CROSSCUT
                ? endOn || cut.along() < LEAST_CROSSCUT
                : endOn && cut.along() < LEAST_CROSSCUT || cut.along() < LEAST_RIP;
    }

    /** 'sled and stop'. */
    public String words() {
        return words;
    }
}
