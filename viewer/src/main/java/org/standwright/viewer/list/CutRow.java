package org.standwright.viewer.list;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.packet.words.BlankSizes;
import org.standwright.packet.words.Counted;
import org.standwright.packet.words.MemberNames;
import org.standwright.packet.words.SecondStage;
import org.standwright.part.Edge;
import org.standwright.unit.Units;

/**
 * A line of the cut list as a row of its table.
 *
 * @param place of the line in the list
 * @param waits whether it is cut only when what it goes into was measured
 */
record CutRow(CutLine line, int place, boolean waits, Units units) {
    /** One row a line, in the list's order. */
    static List<CutRow> of(CutList list, Units units) {
        return IntStream.range(0, list.lines().size())
                .mapToObj(i -> {
                    var line = list.lines().get(i);
                    return new CutRow(line, i, list.cutting().later().contains(line.label()), units);
                })
                .toList();
    }

    /** Sorted as the list is. */
    Shown label() {
        return new Shown(line.label(), place);
    }

    Shown part() {
        return Shown.of(line.part().name());
    }

    Shown count() {
        return Shown.of(line.count());
    }

    /** As it leaves the saw. */
    Shown length() {
        return length(line.part().roughLength());
    }

    /** As it leaves the saw. */
    Shown width() {
        return length(line.part().roughWidth());
    }

    Shown thickness() {
        return length(line.part().thickness());
    }

    private Shown length(double mm) {
        return new Shown(units.bareLength(mm), mm);
    }

    Shown material() {
        return Shown.of(line.material().name());
    }

    /** '2 ends, 1 edge: birch tape'. */
    Shown edges() {
        var bands = line.part().bands();
        var edges = new LinkedHashMap<String, List<Edge>>();
        for (var edge : Edge.values()) {
            bands.on(edge)
                    .ifPresent(banding -> edges.computeIfAbsent(banding.name(), first -> new ArrayList<>())
                            .add(edge));
        }
        return Shown.of(edges.entrySet().stream()
                .map(entry -> counted(entry.getValue()) + ": " + entry.getKey())
                .collect(Collectors.joining("; ")));
    }

    private static String counted(List<Edge> edges) {
        long ends = edges.stream().filter(Edge::isEnd).count();
        return Stream.of(counted(edges.size() - ends, "edge"), counted(ends, "end"))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String counted(long count, String thing) {
        return count == 0 ? "" : count + " " + thing + (count == 1 ? "" : "s");
    }

    /** In one line. */
    Shown notes() {
        return Shown.of(Stream.concat(stage(), line.notes().stream()).collect(Collectors.joining("; ")));
    }

    private Stream<String> stage() {
        return waits ? Stream.of(SecondStage.MARK) : Stream.empty();
    }

    /** All there is to say of it, a sentence or note each. */
    List<String> details() {
        var sizes = new BlankSizes(line.part(), units);
        var words = new ArrayList<String>();
        words.add(line.label() + ": " + line.part().name() + ", " + Counted.of(line.count(), "piece") + ", for "
                + MemberNames.of(line) + ".");
        words.add("Rough blank " + sizes.rough()
                + (sizes.isTrimmed() ? ", cut size " + sizes.cut() : "")
                + (sizes.isBanded() ? ", finished size " + sizes.finished() : "")
                + ", length along the grain × width, " + units.lengthWord() + ".");
        stage().forEach(words::add);
        words.addAll(line.notes());
        return words;
    }
}
