package org.standwright.packet.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.standwright.cutlist.CutLine;

/** Names of the pieces of one cut line, with runs of numbers drawn together: 'drawer 2.1 to 2.6 front'. */
public final class MemberNames {
    /** What comes before a number, its bay, the number and what follows: 'drawer ', '2.', '1', ' front'. */
    private static final Pattern NUMBERED = Pattern.compile("(.*?)((?:\\d+[a-z]*\\.)?)(\\d+)(\\D.*|)");

    private static final int SHORTEST_RUN = 3;

    private MemberNames() {}

    /** In the order of the first of each kind. */
    public static String of(CutLine line) {
        var kinds = new LinkedHashMap<Kind, List<Number>>();
        for (var label : line.members()) {
            var matcher = NUMBERED.matcher(label);
            if (matcher.matches()) {
                var kind = new Kind(matcher.group(1), matcher.group(4));
                var number = new Number(matcher.group(2), Integer.parseInt(matcher.group(3)));
                kinds.computeIfAbsent(kind, key -> new ArrayList<>()).add(number);
            } else {
                kinds.put(new Kind(label, ""), List.of());
            }
        }
        return kinds.entrySet().stream()
                .map(entry -> entry.getKey().before + runs(entry.getValue()) + entry.getKey().after)
                .collect(Collectors.joining(", "));
    }

    private record Kind(String before, String after) {}

    private record Number(String bay, int value) {
        boolean follows(Number other) {
            return bay.equals(other.bay) && value == other.value + 1;
        }

        @Override
        public String toString() {
            return bay + value;
        }
    }

    private static String runs(List<Number> numbers) {
        var words = new ArrayList<String>();
        int from = 0;
        while (from < numbers.size()) {
            int to = from + 1;
            while (to < numbers.size() && numbers.get(to).follows(numbers.get(to - 1))) {
                to++;
            }
            if (to - from >= SHORTEST_RUN) {
                words.add(numbers.get(from) + " to " + numbers.get(to - 1));
            } else {
                numbers.subList(from, to).forEach(number -> words.add(number.toString()));
            }
            from = to;
        }
        return String.join(", ", words);
    }
}
