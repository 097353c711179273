package org.standwright.check.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.balance.FootLoad;
import org.standwright.check.balance.LevelRange;
import org.standwright.check.balance.RollingStand;
import org.standwright.check.bending.WideDrawer;
import org.standwright.check.fastener.EdgeScrews;
import org.standwright.check.handling.ElbowHeight;
import org.standwright.check.handling.MachineLifting;
import org.standwright.check.handling.NeighbourLevel;
import org.standwright.check.handling.SheetLifting;
import org.standwright.check.machine.CordHole;
import org.standwright.check.machine.DrawerInTheWay;
import org.standwright.check.machine.HoseBend;
import org.standwright.check.machine.HoseHole;
import org.standwright.check.machine.MachineAnchor;
import org.standwright.check.machine.MachineOnWorktop;
import org.standwright.check.machine.RouterAir;
import org.standwright.check.machine.RouterSwitch;
import org.standwright.check.machine.SidesInReach;
import org.standwright.check.making.BoardThickness;
import org.standwright.check.making.SheetThickness;
import org.standwright.design.RuleChoice;

/** All rules, asked in order, with what the design decides about them. */
public final class Checks {
    /** In the order in which a maker reads them. */
    public static final List<Rule> RULES = List.of(
            new FootLoad(),
            new RollingStand(),
            new LevelRange(),
            new WideDrawer(),
            new EdgeScrews(),
            new SheetThickness(),
            new BoardThickness(),
            new MachineOnWorktop(),
            new MachineAnchor(),
            new DrawerInTheWay(),
            new SidesInReach(),
            new HoseBend(),
            new HoseHole(),
            new CordHole(),
            new RouterAir(),
            new RouterSwitch(),
            new MachineLifting(),
            new SheetLifting(),
            new NeighbourLevel(),
            new ElbowHeight());

    private Checks() {}

    /** The rule of a name. */
    public static Optional<Rule> named(String name) {
        return RULES.stream().filter(rule -> rule.text().name().equals(name)).findFirst();
    }

    /** What all rules find, the heaviest first and within a weight in the order of the rules. */
    public static List<Finding> of(LoadedStand stand) {
        var findings = new ArrayList<Finding>();
        RULES.forEach(rule -> findings.addAll(of(rule, stand)));
        findings.sort(Comparator.comparing(Finding::severity));
        return findings;
    }

    /** What one rule finds, as strict as the design wants it. */
    public static List<Finding> of(Rule rule, LoadedStand stand) {
        return rule.check(stand).stream()
                .map(finding -> chosen(finding, stand.design().rules()))
                .toList();
    }

    private static Finding chosen(Finding finding, List<RuleChoice> choices) {
        var chosen = finding;
        for (var choice : choices) {
            if (choice.rule().equals(finding.rule())
                    && choice.about().map(finding.subject()::equals).orElse(true)) {
                chosen = chosen.tightened(choice.share());
                if (chosen.isWorthSaying() && choice.waived().isPresent()) {
                    chosen = chosen.waivedFor(choice.waived().get());
                }
            }
        }
        return chosen;
    }
}
