package org.standwright.packet;

import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.fill;
import static org.standwright.design.Designs.given;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.advice.SavingSearch;
import org.standwright.check.Cure;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.Quantity;
import org.standwright.check.RuleText;
import org.standwright.cutlist.CutList;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Envelope;
import org.standwright.design.kit.Reference;
import org.standwright.design.kit.Size2;
import org.standwright.design.stand.StandBuilder;
import org.standwright.drawing.Drawing;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.SheetPlanner;
import org.standwright.unit.Units;

/** Stands with all that a packet prints, for tests. */
final class Jobs {
    static final List<Finding> FINDINGS = List.of(
            Finding.caution(
                    RuleText.plain("drawer-width", "Does it rack?", "common practice, no source"),
                    "drawer 1.2",
                    "The drawer is 374 mm wide and its slide 500 mm long: 0.75 times, within the usual 1.5 times."),
            Finding.stop(
                    RuleText.plain("tip-push", "Does it tip?", "EN 14749"), "stand", "It tips when pushed at 150 N."),
            sag("worktop", 0.61)
                    .cured(Cure.whole("a second worktop layer", Designs.planerStand(), Optional.of(sag(0.12))))
                    .waivedFor("Nothing heavier than a lamp ever stands on it."),
            sag("bottom", 0.2));

    private Jobs() {}

    private static Finding sag(String subject, double sag) {
        var text = new RuleText("part-sag", "Does it sag?", "sag = k W", "It is dry.", "common practice, no source");
        return Finding.judged(text, subject, sag(sag), "It sags under all that is on it.")
                .with(new Input("W", "all that is on it", Quantity.FORCE, 320));
    }

    private static Gauge sag(double sag) {
        return new Gauge(Quantity.SAG, sag, Limit.atMost(0.5, 1.5));
    }

    static StandDesign metric() {
        return Designs.planerStand();
    }

    static StandDesign inches() {
        var design = Designs.stand(
                36 * 25.4,
                Designs.LEVELERS,
                Mount.INSET,
                List.of(bay(300, equal(5)), bay(fill(80)), bay(given(90), equal(1))));
        return with(design, Units.INCH, "36 in stand");
    }

    static StandDesign plinth() {
        return Designs.stand(700, new Support.Plinth(90, 75, 5), Mount.OVERLAY, List.of(bay(equal(1))));
    }

    /** No machine on it: its own worktop is the working height. */
    static StandDesign bench() {
        var worktop = Draft.OfMachine.plain(
                "workbench",
                new Size2(1, 1),
                new Envelope(1, 1, 1, OptionalDouble.empty(), OptionalDouble.empty()),
                1,
                Reference.fixed(Reference.Kind.WORKTOP, 0));
        return Draft.of(metric(), draft -> {
            draft.name = "bench";
            draft.machine = worktop;
        });
    }

    /** Long and low, with many bays. */
    static StandDesign wide() {
        var bays = List.of(bay(fill(80)), bay(equal(3)), bay(equal(2)), bay(equal(1)), bay(fill(100)));
        var design = Designs.stand(700, Designs.LEVELERS, Mount.OVERLAY, bays);
        return Draft.of(with(design, Units.INCH, "wide stand"), draft -> draft.plan(1900, 600));
    }

    /** Names far longer than their places, with characters that no typeface of ours has. */
    static StandDesign longNames() {
        return with(metric(), Units.INCH_64, "a stand " + "with a very long name ".repeat(8) + "\u6728");
    }

    static StandDesign with(StandDesign design, Units units, String name) {
        return Draft.of(design, draft -> {
            draft.unit = units;
            draft.name = name;
        });
    }

    static List<Drawing> packet(StandDesign design) {
        return packet(StandBuilder.build(design));
    }

    static List<Drawing> packet(Stand stand) {
        var design = stand.design();
        var list = CutList.of(stand.assembly(), design.unit());
        var masses = List.of(new MassLine("machine", 38), new MassLine("boards", 61.25));
        var plan = plan(design, list);
        return Packet.pages(stand, list, plan, FINDINGS, SavingSearch.of(stand, list, plan), masses);
    }

    static SheetPlan plan(StandDesign design, CutList list) {
        return SheetPlanner.plan(Stock.of(design), list);
    }
}
