package org.standwright.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A kind of quantity and the units that people write it in. Reads {@code 34 1/2 in}, {@code 34-1/2"}, {@code 2' 10
 * 1/2"}, {@code 0.75in}, {@code 876 mm}, {@code 87.6 cm}, {@code 12 lb 4 oz} and plain numbers in a default unit.
 * Sums are decimal, so that 96 in is the double nearest to 2438.4 mm.
 * Factors: NIST Special Publication 811, appendix B (exact by definition).
 */
public enum Measure {
    LENGTH("length", "876 mm, 87.6 cm, 34 1/2 in, 34-1/2\" or 2' 10 1/2\"", lengthUnits()),
    MASS("mass", "38 kg, 900 g, 84 lb or 12 lb 4 oz", massUnits()),
    FORCE("force", "150 N, 1.2 kN or 34 lbf", forceUnits());

    private static final Pattern TERM = Pattern.compile(
            "\\s*(?:(\\d+)(?:\\s*-\\s*|\\s+)(\\d+)\\s*/\\s*(\\d+)|(\\d+)\\s*/\\s*(\\d+)|(\\d+(?:\\.\\d*)?|\\.\\d+))"
                    + "\\s*([a-zA-Z\"']*)");

    private static final int LONGEST = 60;

    private final String word;
    private final String examples;
    private final Map<String, BigDecimal> units;

    Measure(String word, String examples, Map<String, BigDecimal> units) {
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
        if (text.length() > LONGEST) {
            throw notOne(text);
        }
        var plain = plain(text).strip();
        boolean negative = plain.startsWith("-");
        var terms = negative ? plain.substring(1) : plain;
        var matcher = TERM.matcher(terms);
        var sum = BigDecimal.ZERO;
        var lastFactor = Optional.<BigDecimal>empty();
        int at = 0;
        while (at < terms.length()) {
            if (!matcher.region(at, terms.length()).lookingAt()) {
                throw notOne(text);
            }
            var factor = factor(matcher.group(7), at == 0 && matcher.end() == terms.length(), defaultUnit, text);
            if (lastFactor.filter(last -> factor.compareTo(last) >= 0).isPresent()) {
                throw notOne(text);
            }
            sum = sum.add(number(matcher, text).multiply(factor));
            lastFactor = Optional.of(factor);
            at = matcher.end();
        }
        if (terms.isEmpty()) {
            throw notOne(text);
        }
        return (negative ? sum.negate() : sum).doubleValue();
    }

    /** A plain number that stands in {@code unit}, in mm, kg or N. */
    public double of(double number, String unit) {
        return BigDecimal.valueOf(number).multiply(units.get(unit)).doubleValue();
    }

    private BigDecimal factor(String unit, boolean alone, String defaultUnit, String text) {
        var symbol = unit.isEmpty() && alone ? defaultUnit : unit;
        var factor = units.get(symbol);
        if (factor == null) {
            throw unit.isEmpty() ? notOne(text) : refused(text, "must have a unit of " + word + ", not '" + unit + "'");
        }
        return factor;
    }

    private BigDecimal number(Matcher matcher, String text) {
        if (matcher.group(6) != null) {
            return new BigDecimal(matcher.group(6));
        }
        boolean mixed = matcher.group(1) != null;
        var whole = mixed ? new BigDecimal(matcher.group(1)) : BigDecimal.ZERO;
        var numerator = new BigDecimal(matcher.group(mixed ? 2 : 4));
        var denominator = new BigDecimal(matcher.group(mixed ? 3 : 5));
        if (denominator.signum() == 0) {
            throw refused(text, "must not divide by 0");
        }
        if (mixed && numerator.compareTo(denominator) >= 0) {
            throw refused(text, "must end in a fraction below 1");
        }
        return whole.add(numerator.divide(denominator, MathContext.DECIMAL128));
    }

    private QuantityException notOne(String text) {
        return refused(text, "must be a " + word);
    }

    private QuantityException refused(String text, String rule) {
        var comma = text.contains(",") ? " Use a point for decimals." : "";
        return new QuantityException(shortened(text), rule, "Write it like " + examples + "." + comma);
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "\u2026";
    }

    /** Typographic marks and fractions as the plain characters they stand for. */
    private static String plain(String text) {
        return text.replace('\u2032', '\'')
                .replace('\u2019', '\'')
                .replace('\u2033', '"')
                .replace('\u201d', '"')
                .replace('\u2212', '-')
                .replace('\u2013', '-')
                .replace('\u2044', '/')
                .replace('\u00a0', ' ')
                .replace("\u00bd", " 1/2")
                .replace("\u00bc", " 1/4")
                .replace("\u00be", " 3/4");
    }

    private static Map<String, BigDecimal> lengthUnits() {
        var units = new LinkedHashMap<String, BigDecimal>();
        units.put("mm", new BigDecimal("1"));
        units.put("cm", new BigDecimal("10"));
        units.put("m", new BigDecimal("1000"));
        units.put("in", new BigDecimal("25.4"));
        units.put("\"", new BigDecimal("25.4"));
        units.put("ft", new BigDecimal("304.8"));
        units.put("'", new BigDecimal("304.8"));
        return units;
    }

    private static Map<String, BigDecimal> massUnits() {
        var units = new LinkedHashMap<String, BigDecimal>();
        units.put("kg", new BigDecimal("1"));
        units.put("g", new BigDecimal("0.001"));
        units.put("lb", new BigDecimal("0.45359237"));
        units.put("oz", new BigDecimal("0.028349523125"));
        return units;
    }

    private static Map<String, BigDecimal> forceUnits() {
        var units = new LinkedHashMap<String, BigDecimal>();
        units.put("N", new BigDecimal("1"));
        units.put("kN", new BigDecimal("1000"));
        units.put("lbf", new BigDecimal("4.4482216152605"));
        return units;
    }
}
