package org.standwright.viewer.list;

import java.util.Optional;
import org.standwright.unit.Money;

/**
 * One kind of thing that a job takes.
 *
 * @param count how many, or how much where it is bought by length
 * @param amount the count as a number, for sorting
 * @param size of one, or what else tells it apart
 * @param source where it comes from
 * @param each price of one, where it is given
 */
record Purchase(Kind kind, String count, double amount, String what, String size, Source source, Optional<Money> each) {
    /** What kinds of things there are, in the order of a shopping list. */
    enum Kind {
        BOARD("board"),
        BAR("bar"),
        EDGING("edging"),
        HARDWARE("hardware");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** Whether money is spent on it. */
    enum Source {
        TO_BUY("to buy"),
        AT_HAND("at hand");

        private final String word;

        Source(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** Price of all of them; what is at hand costs nothing and has none. */
    Optional<Money> together() {
        return source == Source.AT_HAND ? Optional.empty() : each.map(price -> price.times((int) amount));
    }

    /** Whether it has to be bought at a price that nobody knows here. */
    boolean isUnpriced() {
        return source == Source.TO_BUY && each.isEmpty();
    }
}
