package org.standwright.check.balance;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.Group;
import org.standwright.design.built.Compartment;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Side;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/** All drawers and doors of a stand, bay by bay. */
final class Openings {
    private final Stand stand;

    Openings(Stand stand) {
        this.stand = stand;
    }

    List<Opening> all() {
        return Compartment.of(stand.bays()).stream().flatMap(this::in).toList();
    }

    private Stream<Opening> in(Compartment compartment) {
        if (compartment.section() instanceof SectionLayout.Drawers column) {
            return column.drawers().stream().map(drawer -> drawer(drawer, compartment.bay()));
        }
        return compartment.section() instanceof SectionLayout.Closed closed
                ? closed.doors().stream().map(door -> door(door, compartment.bay()))
                : Stream.of();
    }

    private Opening drawer(DrawerLayout drawer, String bay) {
        var group = group("drawer " + drawer.name());
        return new Opening(
                group.name(),
                bay,
                true,
                new Vec3(
                        middle(drawer.front()), outerFace(group), drawer.front().y1()),
                group.travel(),
                Vec3.ZERO);
    }

    private Opening door(DoorLayout door, String bay) {
        var group = group("door " + door.name());
        var front = door.front();
        double face = outerFace(group);
        boolean left = door.hung() == Side.LEFT;
        return new Opening(
                group.name(),
                bay,
                false,
                new Vec3(left ? front.x1() : front.x0(), face, front.y1()),
                Vec3.ZERO,
                new Vec3(left ? front.x0() : front.x1(), face, front.y0()));
    }

    private Group group(String name) {
        return stand.assembly().groups().stream()
                .filter(group -> group.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double outerFace(Group group) {
        return Box3.around(group.boxes().toList()).min().y();
    }

    private static double middle(Rect front) {
        return (front.x0() + front.x1()) / 2;
    }
}
