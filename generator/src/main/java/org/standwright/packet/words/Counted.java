package org.standwright.packet.words;

/** Things with their number: 'no drawers', 'one drawer', '3 drawers'. */
public final class Counted {
    private Counted() {}

    /** @param thing one of them, with a plural in -s */
    public static String of(long count, String thing) {
        return count == 1 ? "one " + thing : count == 0 ? "no " + thing + "s" : count + " " + thing + "s";
    }
}
