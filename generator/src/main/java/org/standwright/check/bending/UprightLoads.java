package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.LoadedStand;
import org.standwright.check.Weight;
import org.standwright.design.built.Stand;
import org.standwright.geom.Grid;
import org.standwright.unit.Gravity;

/**
 * What sides and partitions carry, N. Each weight goes to the uprights left and right of it at its height, by its lever
 * between their middles; one that stands on a divider hands on all it carries to those that hold the divider. What lies on
 * the bottom goes to none of them.
 */
final class UprightLoads {
    /** Boards are spread over their width in so many slices. */
    private static final int SLICES = 40;

    private final Stand stand;
    private final Uprights uprights;
    private final List<Floor> floors;
    private final PlacedPart bottom;
    private final double top;
    private final Map<String, Double> forces = new LinkedHashMap<>();

    UprightLoads(LoadedStand loaded) {
        this.stand = loaded.stand();
        this.uprights = Uprights.of(stand);
        this.floors = Floor.of(stand);
        this.bottom = Named.part(stand, "bottom");
        this.top = Named.part(stand, "sub-top").box().min().z();
        uprights.all().forEach(upright -> forces.put(upright.label(), 0.0));
        loaded.weights().forEach(weight -> take(loaded, weight));
        handOn();
    }

    /** What one of them carries at its lower end, itself included. */
    double of(PlacedPart upright) {
        return forces.get(upright.label());
    }

    private void take(LoadedStand loaded, Weight weight) {
        double force = Gravity.newtons(weight.mass());
        switch (weight.kind()) {
            case MACHINE -> machine(loaded, weight, force);
            case BOARD -> board(weight, force);
            case BALLAST -> {}
            case CONTENTS, HARDWARE -> thing(weight, force);
        }
    }

    private void machine(LoadedStand loaded, Weight weight, double force) {
        var feet = MachineFeet.of(loaded);
        feet.forEach(foot -> share(foot.x(), top, foot.force()));
        if (feet.isEmpty()) {
            share(weight.centre().x(), top, force);
        }
    }

    private void board(Weight weight, double force) {
        if (forces.containsKey(weight.what())) {
            forces.merge(weight.what(), force, Double::sum);
            return;
        }
        if (!Set.of("carcass", "worktop").contains(weight.group())
                || weight.what().equals(bottom.label())) {
            thing(weight, force);
            return;
        }
        var box = Named.part(stand, weight.what()).box();
        for (int i = 0; i < SLICES; i++) {
            double x = box.min().x() + (i + 0.5) / SLICES * box.size().x();
            share(x, weight.centre().z(), force / SLICES);
        }
    }

    /** Support and bottom lie below the uprights; what lies on a divider bears on what holds the divider. */
    private void thing(Weight weight, double force) {
        if (!Grid.less(bottom.box().max().z(), weight.centre().z())) {
            return;
        }
        double z = floors.stream()
                .filter(floor -> floor.bears(weight))
                .mapToDouble(floor -> floor.opening().y0() - bottom.part().thickness() / 2)
                .findFirst()
                .orElse(weight.centre().z());
        if (Grid.less(bottom.box().max().z(), z)) {
            share(weight.centre().x(), z, force);
        }
    }

    private void handOn() {
        var onDividers = new ArrayList<>(uprights.all());
        onDividers.removeIf(upright ->
                !Grid.less(bottom.box().max().z(), upright.box().min().z()));
        onDividers.sort(
                Comparator.comparingDouble(upright -> -upright.box().min().z()));
        for (var upright : onDividers) {
            var box = upright.box();
            share(box.centre().x(), box.min().z() - bottom.part().thickness() / 4, of(upright));
        }
    }

    /** To the neighbours at a height; beyond the outermost all of it. */
    private void share(double x, double z, double force) {
        var there = uprights.at(Math.min(z, top));
        for (int i = 1; i < there.size(); i++) {
            double left = there.get(i - 1).box().centre().x();
            double right = there.get(i).box().centre().x();
            if (x <= right || i == there.size() - 1) {
                double share = Math.max(0, Math.min(1, (x - left) / (right - left)));
                forces.merge(there.get(i).label(), share * force, Double::sum);
                forces.merge(there.get(i - 1).label(), (1 - share) * force, Double::sum);
                return;
            }
        }
    }
}
