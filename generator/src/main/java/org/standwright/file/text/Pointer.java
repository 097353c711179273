package org.standwright.file.text;

/** JSON pointers (RFC 6901) as plain texts. */
public final class Pointer {
    private static final int LONGEST = 100;

    private Pointer() {}

    public static String child(String pointer, String key) {
        return pointer + "/" + key.replace("~", "~0").replace("/", "~1");
    }

    public static String child(String pointer, int index) {
        return pointer + "/" + index;
    }

    static String parent(String pointer) {
        return pointer.substring(0, pointer.lastIndexOf('/'));
    }

    /** {@code /bays/0/width} as {@code bays[0].width}, without line breaks and at a length that a message can bear. */
    public static String readable(String pointer) {
        var dotted = pointer.replaceAll("/(\\d+)(?=/|$)", "[$1]").replace('/', '.');
        var plain = (dotted.startsWith(".") ? dotted.substring(1) : dotted)
                .replace("~1", "/")
                .replace("~0", "~")
                .replaceAll("[\\p{Cc}\\p{Cf}]", "?");
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + "…";
    }
}
