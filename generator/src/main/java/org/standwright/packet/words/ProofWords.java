package org.standwright.packet.words;

import java.math.BigDecimal;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.Proof;
import org.standwright.unit.Money;
import org.standwright.unit.Units;

/** How near a plan is to the least that any plan needs, in words. */
public final class ProofWords {
    /** Said of plans that another run may not give again. */
    public static final String NOT_REPEATABLE =
            "The clock ended the search for these plans: working them out again may give others.";

    private final MaterialPlan material;
    private final Units units;

    private ProofWords(MaterialPlan material, Units units) {
        this.material = material;
        this.units = units;
    }

    /** '3 sheets; proved minimal', '124.00 EUR, bound 118.00 EUR, gap 6.00 EUR'. */
    public static String of(MaterialPlan material, Units units) {
        var words = new ProofWords(material, units);
        var proof = material.proof();
        if (proof.reached() == 0) {
            return "nothing to buy; proved minimal";
        }
        return words.counted(proof.reached())
                + (proof.isMinimal()
                        ? "; proved minimal"
                        : ", bound " + words.amount(proof.least()) + ", gap " + words.amount(proof.gap()));
    }

    /** 'proved minimal', 'bound 3, gap 1': of bars, which are counted. */
    public static String ofBars(Proof proof) {
        return proof.isMinimal() ? "proved minimal" : "bound " + proof.least() + ", gap " + proof.gap();
    }

    /** What is bought, and that something was at hand too where sheets alone are counted. */
    private String counted(long reached) {
        if (material.proof().goal() != Proof.Goal.SHEETS) {
            return amount(reached);
        }
        boolean atHand = material.bought() < material.sheets().size();
        return reached + (reached == 1 ? " sheet" : " sheets") + (atHand ? " to buy" : "");
    }

    private String amount(long amount) {
        return switch (material.proof().goal()) {
            case SHEETS -> String.valueOf(amount);
            case MONEY -> money(amount);
            case AREA -> units.area(amount);
        };
    }

    private String money(long thousandths) {
        var exact = BigDecimal.valueOf(thousandths, 3);
        var digits = exact.stripTrailingZeros();
        return new Money(digits.scale() < 2 ? digits.setScale(2) : digits, currency()).toString();
    }

    /** Money is counted only where all bought boards have a price in one currency. */
    private String currency() {
        return material.sheets().stream()
                .map(PlannedSheet::from)
                .flatMap(from -> from.price().stream())
                .map(Money::currency)
                .findFirst()
                .orElseThrow();
    }
}
