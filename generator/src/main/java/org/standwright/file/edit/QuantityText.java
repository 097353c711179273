package org.standwright.file.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.unit.Measure;
import org.standwright.unit.Units;

/** Quantities as a maker writes them who reads the same ones back, without the noise of sums. */
final class QuantityText {
    /** Of a decimal number that still looks like one that somebody wrote. */
    private static final int MOST_PLACES = 4;

    private QuantityText() {}

    /**
     * In the maker's unit: a fraction of an inch where it is one, else a decimal number; in mm, kg or N where it is
     * neither.
     *
     * @param value mm, kg or N
     */
    static JsonNode of(double value, Measure measure, Units unit) {
        var symbol = unit.unitOf(measure);
        var makers = Stream.concat(fraction(value, measure, unit), decimals(value, measure, unit))
                .map(number -> number + " " + symbol);
        var base = decimals(value, measure, Units.MM).map(number -> number + " " + base(measure));
        return Stream.concat(makers, base)
                .filter(text -> SameTree.isSame(measure.parse(text, symbol), value))
                .findFirst()
                .map(TextNode::valueOf)
                .orElseGet(() -> TextNode.valueOf(plain(BigDecimal.valueOf(value)) + " " + base(measure)));
    }

    /** As a plain number, which stands in the maker's unit; empty where it cannot be one exactly. */
    static Optional<JsonNode> bare(double value, Measure measure, Units unit) {
        return decimals(value, measure, unit)
                .map(BigDecimal::new)
                .filter(number -> SameTree.isSame(measure.of(number.doubleValue(), unit.unitOf(measure)), value))
                .findFirst()
                .map(DecimalNode::valueOf);
    }

    private static Stream<String> fraction(double value, Measure measure, Units unit) {
        return measure == Measure.LENGTH && unit != Units.MM
                ? Stream.of(unit.bareLength(value), Units.INCH_64.bareLength(value))
                : Stream.empty();
    }

    /** In the maker's unit, the fewest places first. */
    private static Stream<String> decimals(double value, Measure measure, Units unit) {
        double one = measure.of(1, unit.unitOf(measure));
        return IntStream.rangeClosed(0, MOST_PLACES)
                .mapToObj(places -> plain(BigDecimal.valueOf(value / one).setScale(places, RoundingMode.HALF_UP)));
    }

    private static String base(Measure measure) {
        return Units.MM.unitOf(measure);
    }

    /** Without an exponent and without zeros that say nothing. */
    static String plain(BigDecimal number) {
        var fewest = number.stripTrailingZeros();
        return (fewest.scale() < 0 ? fewest.setScale(0) : fewest).toPlainString();
    }
}
