package org.standwright.check;

import java.util.Optional;
import org.standwright.design.Design;
import org.standwright.unit.Units;

/**
 * A change that was tried: the furniture was built with it and the rule asked again.
 *
 * @param words what is different: 'a second worktop layer'
 * @param design that was built
 * @param after what the rule then measures
 * @param left what it then still warns of; nothing for a cure of all of it
 */
public record Cure(String words, Design design, Optional<Gauge> after, Optional<String> left) {
    /** A change after which nothing is left to watch out for. */
    public static Cure whole(String words, Design design, Optional<Gauge> after) {
        return new Cure(words, design, after, Optional.empty());
    }

    /** 'Cure', or 'Better' where something is left to watch out for. */
    public String title() {
        return left.isPresent() ? "Better" : "Cure";
    }

    /** 'Cure: a second worktop layer, then 0.12 mm.' */
    public String sentence(Units units) {
        return title() + ": " + outcome(units);
    }

    /** 'a second worktop layer, then 0.12 mm.', and what is left. */
    public String outcome(Units units) {
        var figure = after.map(gauge -> ", then " + gauge.figureWords(units)).orElse("");
        return words + figure + "." + left.map(rest -> " " + rest).orElse("");
    }
}
