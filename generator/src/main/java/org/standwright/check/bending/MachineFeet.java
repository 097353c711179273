package org.standwright.check.bending;

import java.util.List;
import org.standwright.check.LoadedStand;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.kit.Point2;
import org.standwright.geom.Grid;

/**
 * Where a machine stands on its worktop: on its bolts, or on the corners of its base, and what each of them bears. Its
 * weight is shared as under a rigid base: evenly, and more to the side of its centre of mass.
 */
final class MachineFeet {
    private final List<Point2> places;
    private final double weight;
    private final double off;

    /** Those of a stand's machine; none where it hangs below the worktop. */
    static List<Foot> of(LoadedStand loaded) {
        return loaded.stand()
                .machine()
                .map(layout -> new MachineFeet(layout, loaded.design().machine().mass()).feet())
                .orElseGet(List::of);
    }

    /** @param mass of the machine, kg */
    private MachineFeet(MachineLayout machine, double mass) {
        this.places = machine.bolts().isEmpty() ? corners(machine) : machine.bolts();
        this.weight = Gravity.newtons(mass);
        this.off = machine.centreOfMass().x() - middle();
    }

    /**
     * @param x in the assembly, mm
     * @param y in the assembly, mm
     * @param force downwards, N
     */
    record Foot(double x, double y, double force) {}

    private List<Foot> feet() {
        return places.stream()
                .map(foot -> new Foot(foot.x(), foot.y(), weight * share(foot)))
                .toList();
    }

    private static List<Point2> corners(MachineLayout machine) {
        var base = machine.base();
        return List.of(
                new Point2(base.min().x(), base.min().y()),
                new Point2(base.max().x(), base.min().y()),
                new Point2(base.min().x(), base.max().y()),
                new Point2(base.max().x(), base.max().y()));
    }

    private double middle() {
        return places.stream().mapToDouble(Point2::x).average().orElseThrow();
    }

    /** Even shares where one foot would be lifted. */
    private double share(Point2 foot) {
        double even = 1.0 / places.size();
        return places.stream().allMatch(any -> levered(any) >= 0) ? levered(foot) : even;
    }

    private double levered(Point2 foot) {
        double middle = middle();
        double spread = places.stream()
                .mapToDouble(any -> (any.x() - middle) * (any.x() - middle))
                .sum();
        double lever = Grid.same(spread, 0) ? 0 : off * (foot.x() - middle) / spread;
        return 1.0 / places.size() + lever;
    }
}
