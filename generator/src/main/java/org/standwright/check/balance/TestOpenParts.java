package org.standwright.check.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.balance.statics.Force;
import org.standwright.check.balance.statics.TippingCase;
import org.standwright.unit.Gravity;

/** The published tests of open drawers and doors, as benchmarks; of each the part that tips most. */
public final class TestOpenParts implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "test-open-parts",
            "Would it stand the published tests of open drawers and doors?",
            "ratio = R / O",
            "A benchmark only: the standard is for domestic and office furniture, not for shop furniture. With its "
                    + "machine; swivel casters point the worst way. Forces act at the front's upper edge.",
            "EN 16122:2012, 11.4.1 to 11.4.3 and 11.5, forces as quoted by an accredited test report");

    /** On an open part, N (11.4.2). */
    private static final double DOWN = 100;
    /** On an open part of a loaded unit: this share of its weight, at most so many N (11.4.3). */
    private static final double SHARE = 0.2;

    private static final double MOST = 300;
    /** Outwards at a part that is locked, N (11.5). */
    private static final double OUT = 100;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var standing = new Standing(loaded);
        var findings = new ArrayList<Finding>();
        if (!standing.openings().isEmpty()) {
            findings.add(verdict(
                    "all open",
                    "Empty with everything open",
                    standing,
                    standing.allOpen().empty()));
            findings.add(empty(standing));
            findings.add(full(standing));
            findings.add(pulled(standing));
        }
        return findings;
    }

    private static Finding empty(Standing standing) {
        var worst = worst(standing, opening -> pressed(standing.open(opening).empty(), opening, DOWN));
        return verdict(
                "one open, empty",
                "Empty, with " + worst.group() + " open and pressed down with " + force(standing, DOWN),
                standing,
                pressed(standing.open(worst).empty(), worst, DOWN));
    }

    private static Finding full(Standing standing) {
        double share = SHARE * standing.loaded().mass() * Gravity.STANDARD;
        Function<Opening, TippingCase> pressed = opening -> share < MOST
                ? sharing(standing.open(opening).full(), opening)
                : pressed(standing.open(opening).full(), opening, MOST);
        var worst = worst(standing, pressed);
        return verdict(
                "one open, full",
                "Full, with " + worst.group() + " open and pressed down with " + force(standing, Math.min(share, MOST)),
                standing,
                pressed.apply(worst));
    }

    private static Opening worst(Standing standing, Function<Opening, TippingCase> pressed) {
        return standing.openings().stream()
                .min(Comparator.comparingDouble(
                        opening -> pressed.apply(opening).worst().ratio()))
                .orElseThrow();
    }

    private static TippingCase pressed(TippingCase open, Opening opening, double newtons) {
        return open.with(edge -> List.of(edge.of(Force.down(newtons, opening.openGrip()))));
    }

    /** Pressed down with a share of the weight of each body, so that more ballast presses more. */
    private static TippingCase sharing(TippingCase open, Opening opening) {
        return open.weighing((body, edge) ->
                edge.of(body).plus(edge.of(Force.down(SHARE * body.mass() * Gravity.STANDARD, opening.openGrip()))));
    }

    private static String force(Standing standing, double newtons) {
        return standing.loaded().units().force(newtons);
    }

    /** The highest of them has the longest lever. */
    private static Finding pulled(Standing standing) {
        var highest = standing.openings().stream()
                .max(Comparator.comparingDouble(opening -> opening.grip().z()))
                .orElseThrow();
        var pulled = standing.closed()
                .empty()
                .with(edge -> List.of(edge.of(Force.level(OUT, Opening.OUTWARDS, highest.grip()))));
        return verdict(
                "locked",
                "Empty, with " + highest.group() + " locked and pulled with " + force(standing, OUT),
                standing,
                pulled);
    }

    private static Finding verdict(String subject, String situation, Standing standing, TippingCase tipping) {
        return new Verdict(TEXT, subject, situation, standing, tipping).within(Verdict.IN_TEST);
    }
}
