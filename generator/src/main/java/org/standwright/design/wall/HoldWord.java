package org.standwright.design.wall;

/** What that is called which holds a screw behind a wall's surface. */
public enum HoldWord {
    STUD("stud", "studs"),
    STEEL_STUD("steel stud", "steel studs"),
    ANCHOR("anchor", "anchors");

    private final String one;
    private final String many;

    HoldWord(String one, String many) {
        this.one = one;
        this.many = many;
    }

    public static HoldWord of(Framing framing) {
        if (framing instanceof Framing.Masonry) {
            return ANCHOR;
        }
        return framing instanceof Framing.SteelStuds ? STEEL_STUD : STUD;
    }

    /** 'stud'. */
    public String one() {
        return one;
    }

    /** 'studs'. */
    public String many() {
        return many;
    }
}
