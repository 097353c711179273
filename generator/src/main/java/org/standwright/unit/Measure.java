package org.standwright.unit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A kind of quantity and the units that people write it in. Reads {@code 34 1/2 in}, {@code 34-1/2"}, {@code 2' 10
 * 1/2"}, {@code 0.75in}, {@code 876 mm}, {@code 87.6 cm}, {@code 12 lb 4 oz} and plain numbers in a default unit.
 * Factors: NIST Special Publication 811, appendix B (exact by definition).
 */
public enum Measure {
    LENGTH("length", "876 mm, 87.6 cm, 34 1/2 in, 34-1/2\" or 2' 10 1/2\"", lengthUnits()),
    MASS("mass", "38 kg, 900 g, 84 lb or 12 lb 4 oz", massUnits()),
    FORCE("force", "150 N, 1.2 kN or 34 lbf", forceUnits());

    private static final Pattern TERM = Pattern.compile(
            "\\s*(?:(\\d+)(?:\\s*-\\s*|\\s+)(\\d+)\\s*/\\s*(\\d+)|(\\d+)\\s*/\\s*(\\d+)|(\\d+(?:\\.\\d*)?|\\.\\d+))"
                    + "\\s*([a-zA-Z\"']*)");

    private final String word;
    private final String examples;
    private final Map<String, Double> units;

    Measure(String word, String examples, Map<String, Double> units) {
        this.word = word;
        this.examples = examples;
        this.units = units;
    }

    /** What the quantity is called in a message. */
    public String word() {
        return word;
    }

    /** Texts that {@link #parse} reads, for a message. */
    public String examples() {
        return examples;
    }

    /**
     * Reads a quantity.
     *
     * @param defaultUnit unit of a number that carries none
     * @return mm, kg or N; negative when the text starts with a minus sign
     * @throws QuantityException when the text is no such quantity
     */
    public double parse(String text, String defaultUnit) {
        var plain = plain(text).strip();
        boolean negative = plain.startsWith("-");
        var terms = negative ? plain.substring(1) : plain;
        var matcher = TERM.matcher(terms);
        double sum = 0;
        double lastFactor = Double.POSITIVE_INFINITY;
        int at = 0;
        while (at < terms.length()) {
            if (!matcher.find(at) || matcher.start() != at) {
                throw notOne(text);
            }
            double factor = factor(matcher.group(7), at == 0 && matcher.end() == terms.length(), defaultUnit, text);
            if (factor >= lastFactor) {
                throw notOne(text);
            }
            sum += number(matcher, text) * factor;
            lastFactor = factor;
            at = matcher.end();
        }
        if (terms.isEmpty() || !Double.isFinite(sum)) {
            throw notOne(text);
        }
        return negative ? -sum : sum;
    }

    /** A plain number that stands in {@code unit}, in mm, kg or N. */
    public double of(double number, String unit) {
        return number * units.get(unit);
    }

    private double factor(String unit, boolean alone, String defaultUnit, String text) {
        var symbol = unit.isEmpty() && alone ? defaultUnit : unit;
        var factor = units.get(symbol);
        if (factor == null) {
            throw unit.isEmpty()
                    ? notOne(text)
                    : new QuantityException("'" + text + "' has the unit '" + unit + "', which is no unit of " + word
                            + " here. Write it like " + examples + ".");
        }
        return factor;
    }

    private double number(Matcher matcher, String text) {
        if (matcher.group(6) != null) {
            return Double.parseDouble(matcher.group(6));
        }
        boolean mixed = matcher.group(1) != null;
        double whole = mixed ? Double.parseDouble(matcher.group(1)) : 0;
        double numerator = Double.parseDouble(matcher.group(mixed ? 2 : 4));
        double denominator = Double.parseDouble(matcher.group(mixed ? 3 : 5));
        if (denominator == 0) {
            throw new QuantityException("'" + text + "' divides by 0. Write it like " + examples + ".");
        }
        return (whole * denominator + numerator) / denominator;
    }

    private QuantityException notOne(String text) {
        var comma = text.contains(",") ? " Use a point for decimals." : "";
        return new QuantityException("'" + text + "' is no " + word + ". Write it like " + examples + "." + comma);
    }

    /** Typographic marks and fractions as the plain characters they stand for. */
    private static String plain(String text) {
        return text.replace('\u2032', '\'')
                .replace('\u2019', '\'')
                .replace('\u2033', '"')
                .replace('\u201d', '"')
                .replace('\u2212', '-')
                .replace('\u2044', '/')
                .replace('\u00a0', ' ')
                .replace("\u00bd", " 1/2")
                .replace("\u00bc", " 1/4")
                .replace("\u00be", " 3/4");
    }

    private static Map<String, Double> lengthUnits() {
        var units = new LinkedHashMap<String, Double>();
        units.put("mm", 1.0);
        units.put("cm", 10.0);
        units.put("m", 1000.0);
        units.put("in", 25.4);
        units.put("\"", 25.4);
        units.put("ft", 304.8);
        units.put("'", 304.8);
        return units;
    }

    private static Map<String, Double> massUnits() {
        var units = new LinkedHashMap<String, Double>();
        units.put("kg", 1.0);
        units.put("g", 0.001);
        units.put("lb", 0.45359237);
        units.put("oz", 0.45359237 / 16);
        return units;
    }

    private static Map<String, Double> forceUnits() {
        var units = new LinkedHashMap<String, Double>();
        units.put("N", 1.0);
        units.put("kN", 1000.0);
        units.put("lbf", 4.4482216152605);
        return units;
    }
}
