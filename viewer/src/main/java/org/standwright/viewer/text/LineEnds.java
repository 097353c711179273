package org.standwright.viewer.text;

/** An editor knows one line end; a file may have the other, or both, and keeps them where nothing was typed. */
final class LineEnds {
    private static final String TWO = "\r\n";

    private LineEnds() {}

    /** The text as an editor shows it. */
    static String plain(String text) {
        return text.replace(TWO, "\n");
    }

    /** The text of a file after what was changed in the editor. */
    static String typedInto(String text, String shown) {
        var splice = Splice.between(plain(text), shown);
        var put = text.contains(TWO) ? splice.put().replace("\n", TWO) : splice.put();
        return text.substring(0, offset(text, splice.from())) + put + text.substring(offset(text, splice.to()));
    }

    /** Where the editor's offset is in the file. */
    private static int offset(String text, int shown) {
        int at = 0;
        for (int seen = 0; seen < shown; seen++) {
            at += text.startsWith(TWO, at) ? TWO.length() : 1;
        }
        return at;
    }
}
