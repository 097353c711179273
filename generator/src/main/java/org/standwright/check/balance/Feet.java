package org.standwright.check.balance;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.balance.statics.Contact;
import org.standwright.design.Support;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.Side;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec2;

/** Where a stand touches the floor: its casters, its levelers, its pads, or its wood where it has none of them. */
final class Feet {
    private final Stand stand;

    Feet(Stand stand) {
        this.stand = stand;
    }

    List<Contact> contacts() {
        if (stand.design().support() instanceof Support.Casters casters) {
            return blocks(Block.Kind.CASTER)
                    .map(box -> new Contact(seen(box), at(box, casters).trail()))
                    .toList();
        }
        if (stand.design().support() instanceof Support.Levelers) {
            return blocks(Block.Kind.LEVELER)
                    .map(box -> new Contact(seen(box), 0))
                    .toList();
        }
        var pads = blocks(Block.Kind.PAD).toList();
        return (pads.isEmpty() ? wood() : pads.stream()).flatMap(Feet::corners).toList();
    }

    /** Two casters at the operator's side, the others away from it. */
    private Caster at(Box3 box, Support.Casters casters) {
        var design = stand.design();
        var operator = design.machine().operator().turned(design.place().turn());
        var centre = stand.carcass().centre();
        var end = box.centre().y() < centre.y() ? Side.FRONT : Side.BACK;
        var side = box.centre().x() < centre.x() ? Side.LEFT : Side.RIGHT;
        return end == operator || side == operator
                ? casters.caster()
                : casters.others().orElse(casters.caster());
    }

    private Stream<Box3> blocks(Block.Kind kind) {
        return stand.assembly().blocks().stream()
                .filter(block -> block.kind() == kind)
                .map(Block::box)
                .filter(Feet::isOnFloor);
    }

    private Stream<Box3> wood() {
        return stand.assembly().parts().stream().map(PlacedPart::box).filter(Feet::isOnFloor);
    }

    private static boolean isOnFloor(Box3 box) {
        return Grid.same(box.min().z(), 0);
    }

    private static Vec2 seen(Box3 box) {
        return new Vec2(box.centre().x(), box.centre().y());
    }

    private static Stream<Contact> corners(Box3 box) {
        return Stream.of(
                Contact.at(box.min().x(), box.min().y()),
                Contact.at(box.max().x(), box.min().y()),
                Contact.at(box.max().x(), box.max().y()),
                Contact.at(box.min().x(), box.max().y()));
    }
}
