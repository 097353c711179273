package org.standwright.check.balance;

import java.util.Locale;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.Quantity;
import org.standwright.check.RuleText;
import org.standwright.check.balance.statics.Balance;
import org.standwright.check.balance.statics.TippingCase;
import org.standwright.design.Steady;
import org.standwright.design.Support;

/**
 * What a rule says about one way in which a stand may tip: what holds it over what tips it. A stand that is anchored
 * does not tip as long as its anchor holds; what that has to bear is said then. On casters it is anchored only now and
 * then, which stays worth a caution.
 *
 * @param situation in words, as a message begins: 'With all drawers open'
 */
record Verdict(RuleText text, String subject, String situation, Standing standing, TippingCase tipping, Lock lock) {
    /** Whether fewer open drawers would answer it. */
    enum Lock {
        OF_NO_USE,
        OF_USE
    }

    /** Below the first somebody has to watch out, below the second it tips; our own choice. */
    static final Limit IN_USE = Limit.atLeast(1.5, 1);
    /** It tips in a published test that does not apply to shop furniture. */
    static final Limit IN_TEST = Limit.cautionBelow(1);
    /** What an anchor has to bear more than it takes to stay; the same as the ratio without it. */
    private static final double ANCHORED = 1.5;

    Verdict(RuleText text, String subject, String situation, Standing standing, TippingCase tipping) {
        this(text, subject, situation, standing, tipping, Lock.OF_NO_USE);
    }

    /** The same where several drawers are open at a time. */
    Verdict helpedByALock() {
        return new Verdict(text, subject, situation, standing, tipping, Lock.OF_USE);
    }

    Finding within(Limit limit) {
        var worst = tipping.worst();
        boolean held = isAnchored() && worst.ratio() < limit.first();
        return (held ? anchored(worst, limit) : judged(worst, limit))
                .with(
                        new Input(
                                "R",
                                "moments that hold it",
                                Quantity.MOMENT,
                                worst.moments().restoring()),
                        new Input(
                                "O",
                                "moments that tip it",
                                Quantity.MOMENT,
                                worst.moments().overturning()));
    }

    private Finding judged(Balance worst, Limit limit) {
        return Finding.judged(text, subject, new Gauge(Quantity.RATIO, worst.ratio(), limit), message(worst))
                .remedies(() -> new Steadier(standing, tipping, limit.first(), lock).against(worst.edge()));
    }

    /** Not a stop, but where it would tip without its anchor, or rolls without it, that is worth a caution. */
    private Finding anchored(Balance worst, Limit limit) {
        boolean rolls = standing.loaded().design().support() instanceof Support.Casters;
        var pull = new AnchorPull(standing, tipping).words(ANCHORED);
        var words = sentence(worst) + ": " + pull
                + (rolls ? ", while it is fixed; released, it is judged as it stands." : ".");
        var held = rolls ? Limit.cautionBelow(limit.first()) : Limit.advisedBelow(limit.first(), 1);
        return Finding.judged(text, subject, new Gauge(Quantity.RATIO, worst.ratio(), held), words);
    }

    private boolean isAnchored() {
        return standing.loaded().design().steady().anchor() != Steady.Anchor.NONE;
    }

    private String message(Balance worst) {
        return worst.moments().overturning() == 0 ? situation + ", nothing tips it." : sentence(worst) + ".";
    }

    private String sentence(Balance worst) {
        return situation + ", what holds it is " + String.format(Locale.ROOT, "%.2f", worst.ratio())
                + " times what tips it over its " + EdgeSide.word(worst.edge()) + " edge";
    }
}
