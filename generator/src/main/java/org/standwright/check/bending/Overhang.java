package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.LoadedStand;
import org.standwright.check.bending.MachineFeet.Foot;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.built.Stand;
import org.standwright.geom.Axis;

/**
 * The worktop where it reaches over the carcass and a machine's foot stands on it: a beam held at the carcass's edge, as wide
 * as the machine's base, with all feet on it at the reach of the farthest.
 *
 * @param where 'overhang at the front'
 * @param reach of the farthest foot beyond the carcass, mm
 * @param force of all feet on it, N
 * @param stiffness E I, N·mm²
 */
record Overhang(String where, double reach, double force, double stiffness, Creep creep) {
    /** Those with a foot on them: front, back, left, right. */
    static List<Overhang> of(LoadedStand loaded, MachineLayout machine) {
        var stand = loaded.stand();
        var carcass = stand.carcass();
        var feet = MachineFeet.of(loaded);
        var base = machine.base().size();
        var found = new ArrayList<Overhang>();
        add(found, "front", feet, foot -> carcass.min().y() - foot.y(), section(stand, Axis.Y_PLUS, base.x()), stand);
        add(found, "back", feet, foot -> foot.y() - carcass.max().y(), section(stand, Axis.Y_PLUS, base.x()), stand);
        add(found, "left", feet, foot -> carcass.min().x() - foot.x(), section(stand, Axis.X_PLUS, base.y()), stand);
        add(found, "right", feet, foot -> foot.x() - carcass.max().x(), section(stand, Axis.X_PLUS, base.y()), stand);
        return found;
    }

    private static void add(
            List<Overhang> found,
            String side,
            List<Foot> feet,
            ToDoubleFunction<Foot> beyond,
            double stiffness,
            Stand stand) {
        var on = feet.stream().filter(foot -> beyond.applyAsDouble(foot) > 0).toList();
        on.stream()
                .max(Comparator.comparingDouble(beyond))
                .ifPresent(farthest -> found.add(new Overhang(
                        "overhang at the " + side,
                        beyond.applyAsDouble(farthest),
                        on.stream().mapToDouble(Foot::force).sum(),
                        stiffness,
                        TopLayers.of(stand).creep())));
    }

    private static double section(Stand stand, Axis way, double width) {
        return TopLayers.of(stand).worktop().stream()
                .map((PlacedPart layer) -> GrainWay.section(layer, way, width))
                .reduce(Section::glued)
                .orElseThrow()
                .stiffness();
    }

    /** After years, mm. */
    double sag() {
        return creep.longTerm(Beam.CANTILEVER_END.deflection(force, reach, stiffness));
    }
}
