package org.standwright.viewer.text;

/**
 * The one stretch in which two texts differ.
 *
 * @param from offset of its start in both texts
 * @param to offset after its end in the old text
 * @param put what the new text has there
 */
record Splice(int from, int to, String put) {
    static Splice between(String before, String after) {
        int shorter = Math.min(before.length(), after.length());
        int from = 0;
        while (from < shorter && before.charAt(from) == after.charAt(from)) {
            from++;
        }
        int same = 0;
        while (same < shorter - from
                && before.charAt(before.length() - 1 - same) == after.charAt(after.length() - 1 - same)) {
            same++;
        }
        return new Splice(from, before.length() - same, after.substring(from, after.length() - same));
    }
}
