package org.standwright.design.support;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.kit.Side;

/**
 * Which caster is at which corner.
 *
 * @param near the two at the operator's side
 * @param far the two away from the operator
 * @param operator the stand's side at which the operator works
 */
record CasterSet(CasterSeat near, CasterSeat far, Side operator) {
    /** Casters of one kind when there are two kinds. */
    private static final int PAIR = 2;

    static CasterSet of(Support.Casters casters, StandDesign design) {
        var near = new CasterSeat(casters.caster());
        var far = casters.others().map(CasterSeat::new).orElse(near);
        return new CasterSet(
                near, far, design.machine().operator().turned(design.place().turn()));
    }

    /** The caster at the corner of an end, front or back, and a side, left or right. */
    CasterSeat at(Side end, Side side) {
        return end == operator || side == operator ? near : far;
    }

    /** Width of wood that takes the wider of them. */
    double strip() {
        return Math.max(near.strip(), far.strip());
    }

    /** All four with their bolts; what both kinds need alike on one line. */
    List<Hardware> hardware(double wood) {
        var lines = new ArrayList<>(near.hardware(PAIR, wood));
        lines.addAll(far.hardware(PAIR, wood));
        lines.add(new Hardware("epoxy, a small pack", 1, "heads of the caster bolts"));
        var counts = new LinkedHashMap<Hardware, Integer>();
        for (var line : lines) {
            counts.merge(new Hardware(line.item(), 1, line.use()), line.count(), Integer::sum);
        }
        return counts.entrySet().stream()
                .map(line -> new Hardware(
                        line.getKey().item(), line.getValue(), line.getKey().use()))
                .toList();
    }
}
