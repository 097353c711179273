package org.standwright.unit;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** An amount in one currency, as '84.50 EUR'. Amounts of different currencies never add. */
public record Money(BigDecimal amount, String currency) {
    private static final Pattern TEXT = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,3})?)\\s*([A-Z]{3})");

    public Money {
        if (amount.signum() < 0) {
            throw new IllegalArgumentException("price " + amount + " " + currency + " is below 0.");
        }
        if (!currency.matches("[A-Z]{3}")) {
            throw new IllegalArgumentException(
                    "currency '" + currency + "' is not three capital letters such as EUR or USD.");
        }
    }

    /**
     * Reads an amount and its currency: {@code 84.00 EUR}.
     *
     * @throws QuantityException when the text is no such amount
     */
    public static Money parse(String text) {
        var parts = TEXT.matcher(text.strip());
        if (!parts.matches()) {
            throw new QuantityException(
                    text, "must be an amount and its currency in three capital letters", "Write it like 84.00 EUR.");
        }
        return new Money(new BigDecimal(parts.group(1)), parts.group(2));
    }

    /** The sum of two amounts in one currency. */
    public Money plus(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException(this + " and " + other + " are of different currencies.");
        }
        return new Money(amount.add(other.amount), currency);
    }

    public Money times(int count) {
        return new Money(amount.multiply(BigDecimal.valueOf(count)), currency);
    }

    @Override
    public String toString() {
        return amount.toPlainString() + " " + currency;
    }
}
