package org.standwright.design.wall.row;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Row;
import org.standwright.design.wall.built.Strip;

/** Rows as a maker could read them: 'row 2 at 1400: 300..1300 screws 400 800 1200', to 0.1 mm. */
final class RowText {
    private RowText() {}

    static List<String> of(CleatedWall wall) {
        return wall.rows().stream().map(RowText::of).toList();
    }

    private static String of(Row row) {
        return "row " + row.number() + " at " + number(row.height()) + ": "
                + row.strips().stream().map(RowText::of).collect(Collectors.joining(", "));
    }

    private static String of(Strip strip) {
        return number(strip.along().from()) + ".." + number(strip.along().to()) + " screws " + numbers(strip.studs());
    }

    static String numbers(List<Double> values) {
        return values.stream().map(RowText::number).collect(Collectors.joining(" "));
    }

    private static String number(double value) {
        var rounded =
                BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.setScale(Math.max(0, rounded.scale())).toPlainString();
    }
}
