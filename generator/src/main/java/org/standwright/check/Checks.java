package org.standwright.check;

import java.util.Comparator;
import java.util.List;
import org.standwright.design.built.Stand;

/** All rules, asked in order. */
public final class Checks {
    private static final List<Rule> RULES = List.of(
            new SupportLoad(),
            new MachineOnWorktop(),
            new RollingStand(),
            new SheetThickness(),
            new BoardThickness(),
            new Tipping(),
            new MachineAnchor(),
            new MachineLifting(),
            new SheetLifting(),
            new LevelFloor(),
            new NeighbourLevel(),
            new ElbowHeight(),
            new DrawerInTheWay(),
            new SidesInReach(),
            new HoseBend(),
            new HoseHole(),
            new CordHole(),
            new RouterAir(),
            new RouterSwitch(),
            new WideDrawer(),
            new EdgeScrews());

    private Checks() {}

    /**
     * What the rules find, the heaviest first.
     *
     * @param wood mass of all parts, kg
     */
    public static List<Finding> of(Stand stand, double wood) {
        var load = Load.of(stand, wood);
        return RULES.stream()
                .flatMap(rule -> rule.check(stand, load).stream())
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }
}
