package org.standwright.check.wall.statics;

/** What gives first at a strip's screw. */
public enum WeakLink {
    WITHDRAWAL("the screw is drawn out"),
    LATERAL("the screw bends or crushes the wood"),
    COMBINED("the screw is bent and drawn out at once"),
    PULL_THROUGH("the head is drawn through the strip");

    private final String words;

    WeakLink(String words) {
        this.words = words;
    }

    /** For a sentence: 'the screw is drawn out'. */
    public String words() {
        return words;
    }
}
