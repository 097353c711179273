package org.standwright.design.stand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/**
 * Asserts that nothing in an assembly stands in anything else, closed or with any one drawer on its way out. Machines are
 * left out, and plates: the box around one has corners where its rabbet is round.
 */
public final class Clearances {
    /** Deeper than this is a penetration, mm. */
    private static final double TOLERANCE = 0.002;

    private Clearances() {}

    private record Thing(String label, String group, List<Box3> cells, Box3 box) {}

    public static void check(Assembly assembly) {
        var things = things(assembly);
        for (int i = 0; i < things.size(); i++) {
            for (int j = i + 1; j < things.size(); j++) {
                apart(things.get(i), things.get(j));
            }
        }
        for (var group : assembly.groups()) {
            if (group.moves()) {
                var moving = things.stream()
                        .filter(thing -> thing.group.equals(group.name()))
                        .toList();
                for (var thing : moving) {
                    var swept = thing.cells.stream()
                            .map(cell -> swept(cell, group.travel()))
                            .toList();
                    var sweep = new Thing(thing.label + " moving", thing.group, swept, Box3.around(swept));
                    things.stream()
                            .filter(other -> !other.group.equals(group.name()))
                            .forEach(other -> apart(sweep, other));
                }
            }
        }
    }

    /** The box that {@code cell} sweeps while it moves straight by {@code travel}, along one axis. */
    private static Box3 swept(Box3 cell, Vec3 travel) {
        return cell.union(new Box3(cell.min().plus(travel), cell.max().plus(travel)));
    }

    private static void apart(Thing a, Thing b) {
        if (a.box.overlap(b.box) > TOLERANCE) {
            assertThat(Cells.penetration(a.cells, b.cells))
                    .as("%s in %s", a.label, b.label)
                    .isLessThanOrEqualTo(TOLERANCE);
        }
    }

    private static List<Thing> things(Assembly assembly) {
        var things = new ArrayList<Thing>();
        for (var group : assembly.groups()) {
            for (var part : group.parts()) {
                things.add(new Thing(part.label(), group.name(), Cells.of(part), part.box()));
            }
            for (var block : group.blocks()) {
                if (block.kind() != Block.Kind.MACHINE && block.kind() != Block.Kind.PLATE) {
                    things.add(new Thing(block.label(), group.name(), List.of(block.box()), block.box()));
                }
            }
        }
        return things;
    }
}
