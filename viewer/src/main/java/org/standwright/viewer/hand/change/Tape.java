package org.standwright.viewer.hand.change;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import org.standwright.design.frame.Exact;
import org.standwright.geom.Grid;
import org.standwright.unit.Measure;
import org.standwright.unit.Units;

/** Lengths as a maker measures and writes them. */
public record Tape(Units units) {
    /** Between two marks, mm. */
    public double step() {
        return units.tapeStep();
    }

    /** The nearest mark, mm. */
    public double snapped(double mm) {
        return Exact.onTape(units, mm);
    }

    /** The mark at or below a length, mm. */
    public double down(double mm) {
        return Exact.onTapeDown(units, mm);
    }

    /** '140 mm'. */
    public String words(double mm) {
        return units.length(mm);
    }

    /** The same length for a file: as it is read back where that is exact, else with all the decimals that it takes. */
    public JsonNode written(double mm) {
        var shown = units.length(mm);
        boolean exact = Grid.same(Measure.LENGTH.parse(shown, units.unitOf(Measure.LENGTH)), mm);
        return JsonNodeFactory.instance.textNode(exact ? shown : Exact.length(units, mm));
    }
}
