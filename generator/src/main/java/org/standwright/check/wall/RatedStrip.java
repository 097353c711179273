package org.standwright.check.wall;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.Quantity;
import org.standwright.check.RuleText;
import org.standwright.check.Severity;
import org.standwright.check.wall.statics.ScrewLoad;
import org.standwright.check.wall.statics.ScrewUse;
import org.standwright.check.wall.statics.WallScrew;
import org.standwright.unit.Gravity;
import org.standwright.unit.Units;

/** A strip that carries something, with a screw that a source rates. */
record RatedStrip(StripLoad load, WallScrew screw) {
    /** From which share of what a screw may carry on it is a caution: our own choice. */
    private static final double CAUTION = 0.8;
    /** Centres of mass from solids differ by less. */
    private static final double MORE = 1 + 1e-5;

    /** Beyond so many times what it holds nothing helps but to hang less. */
    private static final double FAR = 3;

    private static final String HINT =
            "A second screw at each stud, longer screws or a place over more studs hold more.";

    static final String STATICS = "statics of cleats: our own derivation; caution above 0.8: our own choice; screws: ";

    static final String ASSUMED = "The strip pries about its lower edge. Of each holder a stud gets the larger of two"
            + " shares, by levers and of a strip in one piece; only studs behind it count, and one beyond. Of a holder that"
            + " bridges strips each gets the larger of its shares by length and by levers, together more than the whole."
            + " The strip weighs on all its studs alike. Plasterboard counts as rigid, though the edge of a strip crushes it"
            + " a little and so makes the lever of the screws some per cent shorter. The screw counts"
            + " as the largest numbered wood screw that is not thicker, plywood as wood of specific gravity 0.42; a load for"
            + " good, 0.9.";

    /** Those of walls of wood studs, in their order. */
    static List<RatedStrip> of(HungWall wall) {
        return of(wall, HungBody.all(wall));
    }

    static List<RatedStrip> of(HungWall wall, List<HungBody> bodies) {
        var screws = new StripScrew(wall);
        return StripLoad.of(wall, bodies).stream()
                .flatMap(load ->
                        screws.into(load.wall().wall().framing()).stream().map(screw -> new RatedStrip(load, screw)))
                .toList();
    }

    static Limit limit(double most) {
        return Limit.atMost(CAUTION * most, most);
    }

    String label() {
        return load.strip().label();
    }

    /** The screw at a stud where something is worst. */
    record Worst(double stud, ScrewLoad load) {}

    /** Of equals the first from the left. */
    Worst worst(ToDoubleFunction<ScrewLoad> of) {
        return worst(of, 1);
    }

    private Worst worst(ToDoubleFunction<ScrewLoad> of, double times) {
        var loads = load.perStud(times);
        int worst = 0;
        for (int stud = 1; stud < loads.size(); stud++) {
            if (of.applyAsDouble(loads.get(stud)) > MORE * of.applyAsDouble(loads.get(worst))) {
                worst = stud;
            }
        }
        return new Worst(load.strip().studs().get(worst), loads.get(worst));
    }

    /** How much of its worst screw is used. */
    ScrewUse use() {
        return use(1);
    }

    /** The same with so many times what hangs on the strip. */
    ScrewUse use(double times) {
        return screw.use(worst(some -> screw.use(some).most(), times).load());
    }

    /** What a rule says of it, with what would hold more where it is stopped. */
    Finding judged(RuleText text, Worst worst, Gauge gauge, String message, Units units) {
        if (gauge.severity() != Severity.STOP) {
            return Finding.judged(text, label(), gauge, message).with(inputs(worst));
        }
        double times = times();
        var most = " Hung so, it holds " + units.mass(load.weight() * times / Gravity.STANDARD) + " in all.";
        var found = Finding.judged(text, label(), gauge, message + most).with(inputs(worst));
        return times * FAR < 1 ? found : found.hinted(HINT);
    }

    /** The same of a rule whose figure is part of what {@link CleatCombined} stops: then it only notes it. */
    Finding partOf(RuleText text, Worst worst, double figure, double most, String message, HungWall wall) {
        if (isCombined() && use().combined() > 1) {
            var gauge = new Gauge(Quantity.FORCE, figure, Limit.noteAbove(most));
            return Finding.judged(text, label(), gauge, message).with(inputs(worst));
        }
        return judged(text, worst, new Gauge(Quantity.FORCE, figure, limit(most)), message, wall.units())
                .remedies(() -> new Stronger(wall).strip(load));
    }

    /** Whether its screws hold anything, so that pull and weight can be judged together. */
    boolean isCombined() {
        return screw.withdrawal() > 0 && screw.lateral() > 0;
    }

    /** How many times what hangs on it its screws hold, hung as now. */
    private double times() {
        return Largest.of(times -> use(times).most() <= 1);
    }

    /** "'paint': 120 N on this strip; at the stud 1200 mm from the left end of the wall ". */
    String where(Worst worst, Units units) {
        return load.names() + ": " + units.force(load.weight()) + " on this strip; at the stud "
                + units.length(worst.stud()) + " from the left end of the wall ";
    }

    Input[] inputs(Worst worst) {
        return new Input[] {
            new Input(
                    "Fw",
                    "pull on the worst screw",
                    Quantity.FORCE,
                    worst.load().out()),
            new Input("Fv", "load across it", Quantity.FORCE, worst.load().sideways()),
            new Input(
                    "D",
                    "diameter that counts",
                    Quantity.LENGTH,
                    screw.fastener().diameter()),
            new Input("p", "thread in the stud", Quantity.LENGTH, screw.into().thread()),
            new Input(
                    "G",
                    "specific gravity of the stud",
                    Quantity.RATIO,
                    screw.into().gravity())
        };
    }
}
