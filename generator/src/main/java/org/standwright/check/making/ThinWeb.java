package org.standwright.check.making;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;

/**
 * Wood that channels and pockets leave: under each of them, between two from both faces at one place, and beside a
 * channel. The thinnest of each kind, mm.
 */
public final class ThinWeb implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "thin-web",
            "Do grooves, dados, rabbets and pockets leave enough wood?",
            "left = thickness - depth, at least a third of the thickness",
            "Between two from both faces, and beside a channel, at least 6 mm.",
            "common practice, no source");

    private static final double SHARE = 1.0 / 3;
    /** Between two cuts, and beside one, mm. */
    private static final double BETWEEN = 6;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        var findings = new ArrayList<Finding>();
        thinnest(stand, ThinWeb::under, "Under its ").ifPresent(findings::add);
        thinnest(stand, ThinWeb::between, "Between its ").ifPresent(findings::add);
        thinnest(stand, ThinWeb::beside, "Beside its ").ifPresent(findings::add);
        return findings;
    }

    private static Optional<Finding> thinnest(LoadedStand stand, Function<PlacedPart, Stream<Web>> kind, String where) {
        return stand.stand().assembly().parts().stream()
                .flatMap(kind)
                .min(Comparator.comparingDouble(web -> web.left() / web.least()))
                .map(web -> found(stand, web, where));
    }

    private static Finding found(LoadedStand stand, Web web, String where) {
        if (web.left() <= 0) {
            return Finding.stop(TEXT, web.part(), where + web.cut() + " no wood is left.");
        }
        var gauge = new Gauge(Quantity.LENGTH, web.left(), Limit.cautionBelow(web.least()));
        var words = where + web.cut() + " " + stand.units().length(web.left()) + " of wood is left.";
        return Finding.judged(TEXT, web.part(), gauge, words)
                .remedies(List.of(Remedy.ofStand("housings a third of the thickness deep", ThinWeb::shallower)));
    }

    private static Optional<StandDesign> shallower(StandDesign design) {
        var now = design.carcass();
        double third = now.sheet().material().thickness() * SHARE;
        return now.housing() <= third
                ? Optional.empty()
                : Optional.of(Redesign.of(design)
                        .carcass(new CarcassPlan(
                                now.sheet(), now.back(), third, now.fit(), now.joint(), now.backPieces()))
                        .done());
    }

    private static Stream<Web> under(PlacedPart placed) {
        double thickness = placed.part().thickness();
        return Cut.of(placed.part()).stream()
                .map(cut -> new Web(placed.label(), cut.name(), thickness - cut.depth(), SHARE * thickness));
    }

    private static Stream<Web> between(PlacedPart placed) {
        var cuts = Cut.of(placed.part());
        return cuts.stream()
                .flatMap(cut -> cuts.stream()
                        .filter(other -> cut.face() != other.face() && cut.meets(other))
                        .map(other -> new Web(
                                placed.label(),
                                cut.name() + " and what is cut from the other face",
                                placed.part().thickness() - cut.depth() - other.depth(),
                                BETWEEN)));
    }

    private static Stream<Web> beside(PlacedPart placed) {
        return Cut.of(placed.part()).stream()
                .flatMap(cut -> cut.lips(placed.part()))
                .map(lip -> new Web(placed.label(), lip.cut(), lip.width(), BETWEEN));
    }

    private record Web(String part, String cut, double left, double least) {}
}
