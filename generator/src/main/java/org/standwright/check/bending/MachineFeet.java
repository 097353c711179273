package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.check.LoadedStand;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.kit.Point2;
import org.standwright.unit.Gravity;

/**
 * Where a machine stands on its worktop: on its bolts, or on the corners of its base, and what each of them bears. Its base
 * is rigid and all feet yield alike: their forces lie on a plane, force = a + b x + c y, that balances the weight and its
 * moments about both axes (statics; for three feet not in a line there is no other way). A foot that would be lifted bears
 * nothing, and the others bear all.
 */
final class MachineFeet {
    private final List<Point2> places;
    private final double weight;
    private final Point2 centre;

    /** Those of a stand's machine; none where it hangs below the worktop. */
    static List<Foot> of(LoadedStand loaded) {
        return loaded.stand()
                .machine()
                .map(layout -> new MachineFeet(
                                layout.bolts().isEmpty() ? corners(layout) : layout.bolts(),
                                Gravity.newtons(loaded.design().machine().mass()),
                                new Point2(
                                        layout.centreOfMass().x(),
                                        layout.centreOfMass().y()))
                        .feet())
                .orElseGet(List::of);
    }

    /**
     * @param places of its feet, one or more
     * @param weight N
     * @param centre of mass, seen from above
     */
    MachineFeet(List<Point2> places, double weight, Point2 centre) {
        this.places = places;
        this.weight = weight;
        this.centre = centre;
    }

    /**
     * @param x in the assembly, mm
     * @param y in the assembly, mm
     * @param force downwards, N
     */
    record Foot(double x, double y, double force) {}

    /** Those that bear. */
    List<Foot> feet() {
        var bearing = new ArrayList<>(places);
        while (true) {
            var feet = shared(bearing);
            var lifted = feet.stream().filter(foot -> foot.force() < 0).min(Comparator.comparingDouble(Foot::force));
            if (lifted.isEmpty()) {
                return feet;
            }
            bearing.remove(feet.indexOf(lifted.get()));
        }
    }

    private List<Foot> shared(List<Point2> bearing) {
        var plane = FootPlane.of(bearing, weight, centre);
        return bearing.stream()
                .map(foot -> new Foot(foot.x(), foot.y(), plane.force(foot)))
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
}
