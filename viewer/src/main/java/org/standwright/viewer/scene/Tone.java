package org.standwright.viewer.scene;

import java.util.Locale;
import org.standwright.assembly.Block;
import org.standwright.solid.PlacedSolid;

/**
 * What is painted in one colour.
 *
 * @param name as the model says it; the style sheet has it in lower case with hyphens
 */
record Tone(String name) {
    static final Tone PICKED = new Tone("picked");

    /** Wood where it is cut. */
    static final Tone CAP = new Tone("section-cap");

    /**
     * Fixed parts are told apart by their group, the parts of a drawer by what they are.
     *
     * @param moves whether the group moves
     */
    static Tone of(PlacedSolid placed, boolean moves) {
        return new Tone(moves ? placed.part().part().name() : placed.group());
    }

    static Tone of(Block block) {
        return new Tone(block.kind().name());
    }

    String styleClass() {
        return name.toLowerCase(Locale.ROOT).replaceAll("[ _]+", "-");
    }
}
