package org.standwright.viewer.hand.stand;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.unit.Units;
import org.standwright.viewer.hand.change.Tape;

/** Cells as they are when they are new. */
record NewCells(StandDesign design) {
    /** Height of a front to begin with, mm; common practice, no source. */
    private static final double FRONT = 120;

    private static final double FRONT_IN_INCHES = 5 * 25.4;

    /** One drawer of a usual height. */
    Cell drawer() {
        return new Cell(content("drawers"), Cell.Share.GIVEN, front());
    }

    /** As many drawers of about a usual height as there is room for in place of another cell. */
    List<Cell> drawers(Cell instead) {
        double gap = design.drawers().gap();
        int count = Math.max(1, (int) Math.floor((instead.height() + gap) / (front() + gap)));
        double each = new Tape(design.unit()).down((instead.height() - (count - 1) * gap) / count);
        var source = noted("equal-drawers", instead);
        var share = instead.isElastic() ? Cell.Share.EQUAL : Cell.Share.GIVEN;
        return IntStream.range(0, count)
                .mapToObj(i -> new Cell(source, share, each))
                .collect(Collectors.toList());
    }

    List<Cell> open(Cell instead) {
        var source = noted("open", instead);
        Optional.ofNullable(instead.source().get("shelves")).ifPresent(shelves -> source.set("shelves", shelves));
        return List.of(instead(source, instead));
    }

    /**
     * A door with hinges at the carcass's side where it reaches one.
     *
     * @param opening behind it
     * @param all the carcass's openings together
     * @param used hinge of another door of the stand
     */
    List<Cell> door(Cell instead, Rect opening, Rect all, Optional<JsonNode> used) {
        boolean left = Grid.same(opening.x0(), all.x0());
        boolean right = Grid.same(opening.x1(), all.x1());
        var source = noted("door", instead);
        if (design.drawers().mount() == Mount.INSET) {
            source.set("hinge", used.orElse(JsonNodeFactory.instance.textNode("hinge-35-inset")));
        } else {
            source.put("hinge", left || right ? "hinge-35-overlay" : "hinge-35-half-overlay");
        }
        source.put("hung", right && !left ? "right" : "left");
        Optional.ofNullable(instead.source().get("shelves")).ifPresent(shelves -> source.set("shelves", shelves));
        return List.of(instead(source, instead));
    }

    private static Cell instead(ObjectNode source, Cell instead) {
        return new Cell(source, instead.isElastic() ? Cell.Share.OPEN_ENDED : Cell.Share.FIXED, instead.height());
    }

    private double front() {
        return design.unit() == Units.MM ? FRONT : FRONT_IN_INCHES;
    }

    private static ObjectNode content(String kind) {
        return JsonNodeFactory.instance.objectNode().put("kind", kind);
    }

    private static ObjectNode noted(String kind, Cell instead) {
        var content = JsonNodeFactory.instance.objectNode();
        if (!instead.isDrawer() && instead.source().has("note")) {
            content.set("note", instead.source().get("note"));
        }
        return content.put("kind", kind);
    }
}
