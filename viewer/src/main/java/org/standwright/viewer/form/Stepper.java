package org.standwright.viewer.form;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import org.standwright.file.form.Input;
import org.standwright.file.form.Row;
import org.standwright.unit.Measure;
import org.standwright.unit.QuantityException;
import org.standwright.unit.Units;

/** A typed number one step up or down, in the unit that it is typed in: 1 mm, 1/16 in, 1 of what else is counted. */
final class Stepper {
    private static final Pattern DECIMAL = Pattern.compile("(-?\\d+(?:\\.\\d+)?)(\\s*)([a-zA-Z]*)");
    private static final Pattern INCHES = Pattern.compile("-?[\\d\\s./\\-]+(in|\")");
    private static final BigDecimal SIXTEENTH = new BigDecimal("0.0625");

    private Stepper() {}

    /**
     * @param steps how many, less than 0 for down
     * @return empty where the text is no number that can be stepped
     */
    static Optional<String> step(Row row, String text, int steps) {
        var typed = text.strip();
        if (row.input() == Input.LENGTH && INCHES.matcher(typed).matches()) {
            return inches(typed, steps);
        }
        var matcher = DECIMAL.matcher(typed);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        var number = new BigDecimal(matcher.group(1))
                .add(size(row, matcher.group(1), matcher.group(3)).multiply(BigDecimal.valueOf(steps)));
        return Optional.of(number)
                .filter(value -> isWithin(row, value.doubleValue()))
                .map(value -> value.toPlainString() + matcher.group(2) + matcher.group(3));
    }

    private static BigDecimal size(Row row, String number, String unit) {
        if (row.input() == Input.LENGTH && unit.isEmpty() && row.unit() != Units.MM) {
            return SIXTEENTH;
        }
        boolean tenths = row.input() == Input.NUMBER && number.contains(".") || unit.equals("cm");
        return tenths ? new BigDecimal("0.1") : unit.equals("m") ? new BigDecimal("0.001") : BigDecimal.ONE;
    }

    private static Optional<String> inches(String typed, int steps) {
        try {
            double value = Measure.LENGTH.parse(typed, "in") + steps * Units.INCH.tapeStep();
            var unit = typed.endsWith("\"") ? "\"" : " in";
            return Optional.of(Units.INCH_64.bareLength(value) + unit);
        } catch (QuantityException e) {
            return Optional.empty();
        }
    }

    private static boolean isWithin(Row row, double value) {
        return value >= row.least().orElse(Double.NEGATIVE_INFINITY)
                && value <= row.most().orElse(Double.POSITIVE_INFINITY);
    }
}
