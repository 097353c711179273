package org.standwright.packet.words;

import java.util.ArrayList;
import java.util.List;
import org.standwright.advice.Advice;
import org.standwright.advice.Saving;
import org.standwright.design.StandDesign;

/**
 * One saving as a row of a table.
 *
 * @param change what is different, and what to write
 * @param sheets bought before and then: '4 to 3'
 * @param cost of them before and then: '336.00 EUR to 252.00 EUR'
 * @param also what else is different then
 */
public record SavingWords(String change, String sheets, String cost, String also) {
    /** In the order of the advice. */
    public static List<SavingWords> of(StandDesign before, Advice advice) {
        return advice.savings().stream()
                .map(saving -> of(before, advice, saving))
                .toList();
    }

    private static SavingWords of(StandDesign before, Advice advice, Saving saving) {
        return new SavingWords(
                saving.words(before),
                advice.before().sheets() + " to " + saving.after().sheets(),
                cost(before, advice, saving),
                saving.also().isEmpty() ? "nothing" : String.join("; ", saving.also()));
    }

    /** Both as prices or both as areas. */
    private static String cost(StandDesign before, Advice advice, Saving saving) {
        var units = before.unit();
        boolean priced =
                advice.before().money().isPresent() && saving.after().money().isPresent();
        return priced
                ? advice.before().money().get() + " to "
                        + saving.after().money().get()
                : units.area(advice.before().area()) + " to "
                        + units.area(saving.after().area());
    }

    /** What was looked at, and what nothing is made of. */
    public static List<String> notes(Advice advice) {
        var notes = new ArrayList<String>();
        notes.add(advice.tried() + (advice.tried() == 1 ? " other design was" : " other designs were")
                + " looked at"
                + (advice.before().money().isPresent() ? "." : "; areas are those of the boards to buy."));
        advice.unused()
                .forEach(name -> notes.add("Nothing of this stand is cut from " + name + ", which may be changed."));
        return notes;
    }
}
