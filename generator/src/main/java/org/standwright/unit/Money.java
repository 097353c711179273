package org.standwright.unit;

import java.math.BigDecimal;

/** An amount in one currency, as '84.50 EUR'. Amounts of different currencies never add. */
public record Money(BigDecimal amount, String currency) {
    public Money {
        if (amount.signum() < 0) {
            throw new IllegalArgumentException("price " + amount + " " + currency + " is below 0.");
        }
        if (!currency.matches("[A-Z]{3}")) {
            throw new IllegalArgumentException(
                    "currency '" + currency + "' is not three capital letters such as EUR or USD.");
        }
    }

    public Money times(int count) {
        return new Money(amount.multiply(BigDecimal.valueOf(count)), currency);
    }

    @Override
    public String toString() {
        return amount.toPlainString() + " " + currency;
    }
}
