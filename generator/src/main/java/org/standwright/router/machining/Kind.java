package org.standwright.router.machining;

import org.standwright.part.Colour;

/** Kinds of work, from the smallest to what frees the part, each in a plain colour of its own. */
public enum Kind {
    CENTRE_MARK(new Colour(0, 160, 180), "spot the middle of a hole; the hole itself is drilled by hand"),
    BORE(new Colour(200, 0, 200), "round hole"),
    NARROW(new Colour(200, 160, 0), "too narrow for this bit; cut it with a narrower one or by hand"),
    CHANNEL(new Colour(0, 140, 0), "clear out"),
    POCKET(new Colour(0, 0, 200), "clear out"),
    CUTOUT(new Colour(140, 70, 0), "cut inside the line, right through"),
    OUTLINE(new Colour(0, 0, 0), "cut outside the line"),
    TAB(new Colour(255, 0, 0), "bridge left in the outline");

    private final Colour colour;
    private final String words;

    Kind(Colour colour, String words) {
        this.colour = colour;
        this.words = words;
    }

    public Colour colour() {
        return colour;
    }

    /** What is done, for a legend. */
    public String words() {
        return words;
    }
}
