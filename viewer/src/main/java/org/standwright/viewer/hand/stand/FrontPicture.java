package org.standwright.viewer.hand.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.design.built.Compartment;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Side;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.viewer.hand.change.Mark;

/** What of a stand is seen from the front besides what can be picked. */
record FrontPicture(Stand stand) {
    /** Seen beyond the stand to both sides, mm. */
    private static final double MARGIN = 40;

    private static final List<Block.Kind> SEEN =
            List.of(Block.Kind.MACHINE, Block.Kind.CASTER, Block.Kind.LEVELER, Block.Kind.PAD);

    /** From the floor up; of the machine only as much as stands on the top. */
    Rect bounds() {
        var wood = front(Box3.around(List.of(stand.carcass(), stand.worktop())));
        double machine = Math.min(300, machineHeight());
        return new Rect(wood.x0() - MARGIN, -MARGIN / 2, wood.x1() + MARGIN, wood.y1() + machine + MARGIN / 2);
    }

    private double machineHeight() {
        return Math.max(
                0, stand.assembly().box().max().z() - stand.worktop().max().z());
    }

    List<Mark> under() {
        var under = new ArrayList<Mark>();
        var bounds = bounds();
        under.add(Mark.line(bounds.x0(), 0, bounds.x1(), 0, "floor"));
        stand.assembly().blocks().stream()
                .filter(block -> SEEN.contains(block.kind()))
                .map(block -> Mark.area(within(front(block.box()), bounds), "block"))
                .forEach(under::add);
        stand.assembly().parts().stream()
                .filter(part -> part.box().max().z() <= stand.carcass().min().z() + 1)
                .map(part -> Mark.area(front(part.box()), "wood"))
                .forEach(under::add);
        under.add(Mark.area(front(stand.carcass()), "wood"));
        if (stand.worktop().max().z() > stand.carcass().max().z() + 1) {
            under.add(Mark.area(front(stand.worktop()), "wood"));
        }
        return under;
    }

    private static Rect within(Rect area, Rect bounds) {
        return new Rect(
                Math.max(area.x0(), bounds.x0()),
                area.y0(),
                Math.max(area.x0(), bounds.x0())
                        + Math.max(1, Math.min(area.x1(), bounds.x1()) - Math.max(area.x0(), bounds.x0())),
                Math.max(area.y0() + 1, Math.min(area.y1(), bounds.y1())));
    }

    private static Rect front(Box3 box) {
        return new Rect(box.min().x(), box.min().z(), box.max().x(), box.max().z());
    }

    /** Shelves, and on each door a V that points at its hinges. */
    List<Mark> over() {
        return Compartment.of(stand.bays()).stream().flatMap(this::marks).toList();
    }

    private Stream<Mark> marks(Compartment compartment) {
        var opening = compartment.section().opening();
        double panel = stand.design().carcass().sheet().material().thickness();
        if (compartment.section() instanceof SectionLayout.Closed closed) {
            return closed.doors().stream().flatMap(FrontPicture::hinged);
        }
        return compartment.shelves().stream()
                .map(shelf -> new Rect(opening.x0(), opening.y0() + shelf, opening.x1(), opening.y0() + shelf + panel))
                .map(shelf -> Mark.area(shelf, "shelf"));
    }

    private static Stream<Mark> hinged(DoorLayout door) {
        var front = door.front();
        boolean left = door.hung() == Side.LEFT;
        double hinge = left ? front.x0() : front.x1();
        double handle = left ? front.x1() : front.x0();
        double middle = (front.y0() + front.y1()) / 2;
        return Stream.of(
                Mark.line(hinge, middle, handle, front.y0(), "hung"),
                Mark.line(hinge, middle, handle, front.y1(), "hung"));
    }
}
