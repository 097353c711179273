package org.standwright.design.built;

import java.util.List;

/**
 * What adds up to the working height, from the floor up. The carcass is the term that is solved for; the others come
 * from the maker and the presets.
 */
public record HeightStack(List<Term> terms, double workingHeight) {
    public HeightStack {
        terms = List.copyOf(terms);
    }

    /**
     * One layer of the stack.
     *
     * @param height mm
     * @param less how much lower it can be set, mm
     * @param more how much higher it can be set, mm
     */
    public record Term(String name, double height, double less, double more) {
        public static Term fixed(String name, double height) {
            return new Term(name, height, 0, 0);
        }

        public boolean isAdjustable() {
            return less > 0 || more > 0;
        }
    }

    /** Sum of the terms, mm. Equals {@link #workingHeight} within 1e-6. */
    public double sum() {
        return terms.stream().mapToDouble(Term::height).sum();
    }

    /** Lowest height that the adjustable terms allow, mm. */
    public double lowest() {
        return workingHeight - terms.stream().mapToDouble(Term::less).sum();
    }

    /** Highest height that the adjustable terms allow, mm. */
    public double highest() {
        return workingHeight + terms.stream().mapToDouble(Term::more).sum();
    }
}
