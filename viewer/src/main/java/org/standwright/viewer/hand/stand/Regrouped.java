package org.standwright.viewer.hand.stand;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.standwright.viewer.hand.change.Tape;

/** A bay's contents as a file lists them, from the cells of its column: neighbours that belong together are one content. */
final class Regrouped {
    private static final String NOTE = "note";

    private final List<Cell> before;
    private final Tape tape;
    private final List<ObjectNode> noted = new ArrayList<>();
    private final ArrayNode contents = JsonNodeFactory.instance.arrayNode();

    private Regrouped(List<Cell> before, Tape tape) {
        this.before = before;
        this.tape = tape;
    }

    /**
     * @param before cells as the file describes them; a content whose cells are all still there stays as it is written
     */
    static ArrayNode contents(List<Cell> before, List<Cell> after, Tape tape) {
        var regrouped = new Regrouped(before, tape);
        int from = 0;
        while (from < after.size()) {
            int to = from + 1;
            while (to < after.size() && belongTogether(after.get(from), after.get(to))) {
                to++;
            }
            regrouped.add(after.subList(from, to));
            from = to;
        }
        return regrouped.contents;
    }

    private static boolean belongTogether(Cell a, Cell b) {
        return a.isDrawer() && a.source() == b.source() && a.share() == b.share() && a.share() != Cell.Share.REST;
    }

    private void add(List<Cell> run) {
        var source = run.get(0).source();
        var content = isAsWritten(run) ? source.deepCopy() : changed(run);
        if (noted.stream().anyMatch(other -> other == source)) {
            content.remove(NOTE);
        }
        noted.add(source);
        contents.add(content);
    }

    private boolean isAsWritten(List<Cell> run) {
        var written = written(run.get(0).source());
        return written.size() == run.size()
                && IntStream.range(0, run.size()).allMatch(i -> written.get(i) == run.get(i));
    }

    private ObjectNode changed(List<Cell> run) {
        var first = run.get(0);
        return switch (first.share()) {
            case GIVEN -> fronts(run);
            case EQUAL, GRADUATED -> first.source().deepCopy().put("count", run.size());
            case FILLED, REST -> drawers(first, "equal-drawers").put("count", run.size());
            case FIXED -> first.source().deepCopy().set("height", tape.written(first.height()));
            case OPEN_ENDED -> {
                var open = first.source().deepCopy();
                open.remove("height");
                yield open;
            }
        };
    }

    private ObjectNode fronts(List<Cell> run) {
        var content = drawers(run.get(0), "drawers");
        var fronts = content.putArray("fronts");
        run.forEach(cell -> fronts.add(asWritten(cell).orElseGet(() -> tape.written(cell.height()))));
        return content;
    }

    /** A front's height as its content gives it, where it is still that front. */
    private Optional<JsonNode> asWritten(Cell cell) {
        var written = written(cell.source());
        var fronts = cell.source().path("fronts");
        return IntStream.range(0, Math.min(written.size(), fronts.size()))
                .filter(i -> written.get(i) == cell)
                .mapToObj(fronts::get)
                .findFirst();
    }

    private List<Cell> written(ObjectNode source) {
        return before.stream().filter(cell -> cell.source() == source).toList();
    }

    private static ObjectNode drawers(Cell cell, String kind) {
        var content = JsonNodeFactory.instance.objectNode();
        if (cell.source().has(NOTE)) {
            content.set(NOTE, cell.source().get(NOTE));
        }
        return content.put("kind", kind);
    }
}
