package org.standwright.file.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Finds the name that was probably meant: the one with the fewest letters wrong, swapped, missing or too many, and of
 * several the one that starts alike for longest.
 */
public final class NearestName {
    private static final int FEW = 12;

    private NearestName() {}

    public static Optional<String> to(String given, Collection<String> known) {
        int most = given.length() < 4 ? 1 : Math.max(2, given.length() / 3);
        return known.stream()
                .filter(name -> Math.abs(name.length() - given.length()) <= most && distance(given, name) <= most)
                .min(Comparator.comparingInt((String name) -> distance(given, name))
                        .thenComparingInt(name -> -sameStart(given, name)));
    }

    /** {@code Did you mean "width"?}, or nothing. */
    public static String guess(String given, Collection<String> known) {
        return to(given, known).map(name -> "Did you mean \"" + name + "\"?").orElse("");
    }

    /** A guess, else the known names when they are few, else nothing. */
    public static String hint(String given, List<String> known) {
        var guess = guess(given, known);
        return guess.isEmpty() && !known.isEmpty() && known.size() <= FEW ? "Use " + either(known) + "." : guess;
    }

    /** {@code "a", "b" or "c"}. */
    public static String either(List<String> names) {
        var quoted = names.stream().map(name -> "\"" + name + "\"").toList();
        int last = quoted.size() - 1;
        return last < 1
                ? String.join("", quoted)
                : quoted.stream().limit(last).collect(Collectors.joining(", ")) + " or " + quoted.get(last);
    }

    /** How many letters both start with. */
    private static int sameStart(String one, String other) {
        int same = 0;
        while (same < Math.min(one.length(), other.length()) && one.charAt(same) == other.charAt(same)) {
            same++;
        }
        return same;
    }

    /** Edit distance in which two swapped neighbours count once; capital and small letters are the same. */
    private static int distance(String one, String other) {
        var a = one.toLowerCase(Locale.ROOT);
        var b = other.toLowerCase(Locale.ROOT);
        int[][] steps = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                steps[i][j] = i == 0 || j == 0 ? i + j : cheapest(steps, a, b, i, j);
            }
        }
        return steps[a.length()][b.length()];
    }

    private static int cheapest(int[][] steps, String a, String b, int i, int j) {
        int replaced = steps[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int cheapest = Math.min(replaced, 1 + Math.min(steps[i - 1][j], steps[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(cheapest, steps[i - 2][j - 2] + 1) : cheapest;
    }
}
