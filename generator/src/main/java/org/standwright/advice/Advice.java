package org.standwright.advice;

import java.util.List;

/**
 * What would save a sheet.
 *
 * @param before what the boards of the design come to
 * @param savings first those with fewer sheets, the smallest change first; then the others, the cheapest first
 * @param tried how many changed designs were looked at
 * @param unused names of boards that may be changed, but of which nothing is made
 */
public record Advice(Cost before, List<Saving> savings, int tried, List<String> unused) {
    public Advice {
        savings = List.copyOf(savings);
        unused = List.copyOf(unused);
    }
}
