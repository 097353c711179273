package org.standwright.viewer.list;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * What stands in a cell, and where that belongs when cells are sorted.
 *
 * @param order smaller ones come first; those of one order go by their words
 */
record Shown(String words, double order) implements Comparable<Shown> {
    private static final Pattern STEP = Pattern.compile("\\d+|\\D+");

    /** Sorted by its words alone. */
    static Shown of(String words) {
        return new Shown(words, 0);
    }

    static Shown of(long count) {
        return new Shown(String.valueOf(count), count);
    }

    @Override
    public int compareTo(Shown other) {
        int byOrder = Double.compare(order, other.order);
        return byOrder != 0 ? byOrder : compare(words, other.words);
    }

    /** Letter by letter, but whole numbers by their value: 'drawer 1.2' before 'drawer 1.10'. */
    private static int compare(String a, String b) {
        var ours = STEP.matcher(a).results().map(MatchResult::group).toList();
        var others = STEP.matcher(b).results().map(MatchResult::group).toList();
        for (int i = 0; i < Math.min(ours.size(), others.size()); i++) {
            int step = step(ours.get(i), others.get(i));
            if (step != 0) {
                return step;
            }
        }
        return Integer.compare(ours.size(), others.size());
    }

    private static int step(String a, String b) {
        boolean numbers = Character.isDigit(a.charAt(0)) && Character.isDigit(b.charAt(0));
        if (numbers && a.length() != b.length()) {
            return Integer.compare(a.length(), b.length());
        }
        return numbers ? a.compareTo(b) : a.compareToIgnoreCase(b);
    }

    /** For tables and screen readers alike. */
    @Override
    public String toString() {
        return words;
    }
}
