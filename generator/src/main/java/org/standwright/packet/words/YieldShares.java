package org.standwright.packet.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.standwright.sheet.Yield;

/** Shares of boards in percent to one decimal that add up to exactly 100. */
public final class YieldShares {
    private static final int WHOLE = 1000;

    /** What the shares are of, in their order. */
    public static final List<String> NAMES = List.of("Parts", "Kerf", "Trim", "Offcuts to keep", "Waste");

    private YieldShares() {}

    /** One a name: '81.4 %'. */
    public static List<String> of(Yield split) {
        return words(tenths(List.of(split.parts(), split.kerf(), split.trim(), split.offcuts(), split.waste())));
    }

    /** '81.4 %': the parts alone. */
    public static String parts(Yield split) {
        return of(split).get(0);
    }

    /** Largest remainders get the tenths that rounding down left over. */
    static List<Integer> tenths(List<Long> areas) {
        double whole = areas.stream().mapToLong(Long::longValue).sum();
        var exact = areas.stream().map(area -> area / whole * WHOLE).toList();
        var tenths = new ArrayList<>(
                exact.stream().map(share -> (int) Math.floor(share)).toList());
        int left = WHOLE - tenths.stream().mapToInt(Integer::intValue).sum();
        IntStream.range(0, areas.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> tenths.get(i) - exact.get(i)))
                .limit(left)
                .forEach(i -> tenths.set(i, tenths.get(i) + 1));
        return List.copyOf(tenths);
    }

    private static List<String> words(List<Integer> tenths) {
        return tenths.stream()
                .map(share -> String.format(Locale.ROOT, "%d.%d %%", share / 10, share % 10))
                .toList();
    }
}
