package org.standwright.export.step;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.standwright.geom.Vec3;

/**
 * The data section of a STEP file as it grows: entities numbered from 1 as they are added, in the clear text encoding of
 * ISO 10303-21.
 */
final class StepText {
    private final StringBuilder text = new StringBuilder(1 << 16);
    private final Map<String, Integer> known = new HashMap<>();
    private int last;

    /** Adds an entity: {@code CLOSED_SHELL('',(#1,#2))}. Returns its number. */
    int add(String entity) {
        last++;
        text.append('#').append(last).append('=').append(entity).append(";\n");
        return last;
    }

    /** The number of an entity that may be there already. */
    int share(String entity) {
        return known.computeIfAbsent(entity, this::add);
    }

    int point(Vec3 at) {
        return add("CARTESIAN_POINT(''," + triple(at) + ")");
    }

    int direction(Vec3 way) {
        return share("DIRECTION(''," + triple(way) + ")");
    }

    /** An axis and what angles begin from, at a place. */
    int frame(Vec3 at, Vec3 axis, Vec3 start) {
        return add("AXIS2_PLACEMENT_3D('',#" + point(at) + ",#" + direction(axis) + ",#" + direction(start) + ")");
    }

    /** {@code (#1,#2)}. */
    static String list(List<Integer> numbers) {
        var list = new StringBuilder("(");
        for (int number : numbers) {
            list.append(list.length() > 1 ? "," : "").append('#').append(number);
        }
        return list.append(')').toString();
    }

    private static String triple(Vec3 v) {
        return "(" + StepReal.of(v.x()) + "," + StepReal.of(v.y()) + "," + StepReal.of(v.z()) + ")";
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
