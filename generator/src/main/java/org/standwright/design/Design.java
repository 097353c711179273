package org.standwright.design;

import java.util.List;
import java.util.Optional;
import org.standwright.design.kit.Bar;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/** What a maker decided about one piece of furniture, as far as every kind of furniture says it. */
public interface Design {
    String name();

    /** What the maker writes and reads. */
    Units unit();

    Saw saw();

    /** The router that cuts its sheets too, if there is one. */
    Optional<Router> router();

    StockPlan stock();

    CuttingPlan cutting();

    /** Every sheet good that its parts are cut from, each once. */
    List<SheetGood> sheets();

    /** Bar stock that its parts are cut from, as bought, each once. */
    List<Bar> bars();

    /** How much wider a dado is than the board it was drawn for, mm. */
    double fit();

    /** What is stricter than usual, and what is accepted as it is. */
    List<RuleChoice> rules();

    /** The same design, read back in other units. */
    Design readIn(Units other);

    /** All boards that its parts can be cut from, material by material. */
    default List<StockSheet> boards() {
        return stock().boards(sheets(), unit());
    }

    <R> R accept(DesignVisitor<R> visitor);
}
