package org.standwright.packet.words;

import java.util.ArrayList;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.design.kit.StockSheet;
import org.standwright.geom.Grid;
import org.standwright.sheet.MaterialPlan;
import org.standwright.unit.Units;

/** What a board of a plan is called. */
public final class BoardWords {
    private BoardWords() {}

    /**
     * 'birch 18, sheet 2 of 3 (shelf rest, at hand, measured 17.6 mm)'.
     *
     * @param index of the board, from 0 on
     */
    public static String of(MaterialPlan material, int index, Units units) {
        var from = material.sheets().get(index).from();
        var more = Stream.of(isNamed(from) ? from.name() : "", more(from, units))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
        return material.material().name() + ", sheet " + (index + 1) + " of "
                + material.sheets().size() + (more.isEmpty() ? "" : " (" + more + ")");
    }

    /** 'birch 18', or 'birch 18: shelf rest' for one with a name of its own. */
    public static String name(StockSheet from) {
        return isNamed(from) ? from.material().name() + ": " + from.name() : from.name();
    }

    /** What sets a board apart from one bought new: 'at hand, measured 17.6 mm'. */
    public static String more(StockSheet from, Units units) {
        var words = new ArrayList<String>();
        if (!from.isBought()) {
            words.add("at hand");
        }
        if (hasOwnThickness(from)) {
            words.add("measured " + units.length(from.thickness()));
        }
        return String.join(", ", words);
    }

    private static boolean isNamed(StockSheet from) {
        return !from.name().equals(from.material().name());
    }

    /** Whether it is thicker or thinner than the design has its material. */
    public static boolean hasOwnThickness(StockSheet from) {
        return !Grid.same(from.thickness(), from.material().thickness());
    }
}
