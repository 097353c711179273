package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.LoadedStand;
import org.standwright.check.Weight;
import org.standwright.design.built.Stand;
import org.standwright.geom.Grid;
import org.standwright.unit.Gravity;

/** What a level panel bears: things put on it, partitions that stand on it, ballast under a bottom, and itself. */
final class LevelLoads {
    /** Not more than 200 lb on one shelf: Architectural Woodwork Standards 2009, section 10; kg. */
    static final double MOST = 90.7;

    private final LoadedStand loaded;
    private final Stand stand;
    private final Uprights uprights;
    private final UprightLoads carried;
    private final double pressure;

    LevelLoads(LoadedStand loaded) {
        this.loaded = loaded;
        this.stand = loaded.stand();
        this.uprights = Uprights.of(stand);
        this.carried = new UprightLoads(loaded);
        this.pressure = loaded.design().loads().shelves() * 1e-6;
    }

    /** Of a shelf in an opening: everything that may lie on it. */
    List<SpanLoad> onShelf(PlacedPart shelf, double x0, double x1) {
        return List.of(things(shelf, x0, x1, x0), itself(shelf, x0, x1));
    }

    /** Of the floor of openings between x0 and x1. */
    List<SpanLoad> onFloor(PlacedPart level, double x0, double x1) {
        var loads = new ArrayList<SpanLoad>();
        loads.add(itself(level, x0, x1));
        Floor.of(stand).stream()
                .map(Floor::opening)
                .filter(opening -> Grid.same(opening.y0(), level.box().max().z()))
                .filter(opening -> opening.x0() < x1 && opening.x1() > x0)
                .forEach(opening ->
                        loads.add(things(level, Math.max(x0, opening.x0()), Math.min(x1, opening.x1()), x0)));
        uprights.on(level).stream()
                .filter(upright -> inside(upright, x0, x1))
                .forEach(upright ->
                        loads.add(SpanLoad.point(upright.box().centre().x() - x0, carried.of(upright))));
        if (level.label().equals("bottom")) {
            loads.addAll(ballast(x0, x1));
        }
        return loads;
    }

    /**
     * Fixed under the bottom. Right below a partition at an end of the span half of it hangs on either side, as it is not
     * thin: over each span evenly.
     */
    private List<SpanLoad> ballast(double x0, double x1) {
        return loaded.weights().stream()
                .filter(weight -> weight.kind() == Weight.Kind.BALLAST)
                .flatMap(weight -> ballast(weight, x0, x1).stream())
                .toList();
    }

    private Optional<SpanLoad> ballast(Weight weight, double x0, double x1) {
        double x = weight.centre().x();
        double force = Gravity.newtons(weight.mass());
        if (x > x0 && x < x1) {
            return Optional.of(SpanLoad.point(x - x0, force));
        }
        boolean beside = uprights.all().stream()
                .map(PlacedPart::box)
                .filter(upright -> !Grid.less(x, upright.min().x())
                        && !Grid.less(upright.max().x(), x))
                .anyMatch(upright -> Grid.same(upright.max().x(), x0)
                        || Grid.same(upright.min().x(), x1));
        return beside ? Optional.of(new SpanLoad(0, x1 - x0, force / 2)) : Optional.empty();
    }

    private static boolean inside(PlacedPart upright, double x0, double x1) {
        double x = upright.box().centre().x();
        return x > x0 && x < x1;
    }

    private SpanLoad things(PlacedPart level, double from, double to, double x0) {
        double mass = (to - from) * level.box().size().y() * pressure;
        return new SpanLoad(from - x0, to - x0, Gravity.newtons(Math.min(MOST, mass)));
    }

    private static SpanLoad itself(PlacedPart level, double x0, double x1) {
        double area = (x1 - x0) * level.box().size().y();
        return new SpanLoad(0, x1 - x0, LayerWeight.of(level.part().material()) * area);
    }
}
