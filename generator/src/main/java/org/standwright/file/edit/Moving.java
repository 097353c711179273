package org.standwright.file.edit;

import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Moves a list's entry; what stands between entries stays where it is. */
final class Moving {
    private Moving() {}

    static String moved(String text, Written list, int from, int to) {
        var entries = list.members().stream().map(member -> member.in(text)).collect(Collectors.toList());
        entries.add(to, entries.remove(from));
        var moved = new StringBuilder(text.substring(0, list.start()));
        int end = list.start();
        for (int place : IntStream.range(0, entries.size()).toArray()) {
            var slot = list.members().get(place);
            moved.append(text, end, slot.start()).append(entries.get(place));
            end = slot.end();
        }
        return moved.append(text, end, text.length()).toString();
    }
}
