package org.standwright.check.wall;

import java.util.List;
import java.util.function.UnaryOperator;
import org.standwright.check.wall.statics.WeakLink;

/** What hangs on one strip, all of it made more or less in the same proportion: how many times it holds that. */
record StripFill(RatedStrip strip) {

    /**
     * @param mass here how many times what hangs on it
     */
    MostHung most() {
        double screws = Largest.of(factor -> at(factor).use().most() <= 1);
        double ends = Largest.of(
                factor -> StripEnd.of(at(factor).load()).stream().allMatch(end -> end.stress() <= StripEnd.MOST));
        return new MostHung(screws, weakest(screws).words())
                .or(new MostHung(ends, "the end of the strip bends"))
                .or(new MostHung(hand(), "a hand on the front of one draws the strip off"));
    }

    private WeakLink weakest(double factor) {
        return at(factor).use().weakest();
    }

    /** Whichever of them it presses on, as {@link HangLip} does. */
    private double hand() {
        return bodies().stream()
                .mapToDouble(pressed -> Largest.of(factor -> with(body -> {
                                    var full = body.times(factor);
                                    return body.equals(pressed) ? HangLip.pressed(full) : full;
                                })
                                .use()
                                .most()
                        <= HangLip.STOP))
                .min()
                .orElse(Largest.BEYOND_ALL);
    }

    private List<HungBody> bodies() {
        return strip.load().held().stream().map(HeldBy::body).toList();
    }

    private RatedStrip at(double factor) {
        return with(body -> body.times(factor));
    }

    private RatedStrip with(UnaryOperator<HungBody> change) {
        var held = strip.load().held().stream()
                .map(piece -> new HeldBy(change.apply(piece.body()), piece.strip(), piece.along(), piece.share()))
                .toList();
        return new RatedStrip(strip.load().carrying(held), strip.screw());
    }
}
