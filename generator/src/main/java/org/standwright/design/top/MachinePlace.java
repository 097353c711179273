package org.standwright.design.top;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Block;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.TurnedBase;
import org.standwright.design.kit.CentreOfMass;
import org.standwright.design.kit.Machine;
import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Range;
import org.standwright.design.kit.Reference;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/**
 * Where the machine stands: its base turned, its margins kept from the worktop's edges; without margins over the middle of
 * the carcass, where the plan's size is given.
 */
final class MachinePlace {
    /** Of a machine's height, where its centre of mass is not known; common practice, no source. */
    private static final double UNKNOWN_CENTRE = 2.0 / 3;

    private final Frame frame;
    private final Machine machine;
    private final TurnedBase turned;

    MachinePlace(Frame frame) {
        this.frame = frame;
        this.machine = frame.design().machine();
        this.turned = new TurnedBase(machine.base(), frame.design().place().turn());
    }

    /** Nothing for a machine whose work surface is the worktop: it hangs below it, or is the stand itself. */
    Optional<MachineLayout> layout() {
        if (machine.reference().kind() == Reference.Kind.WORKTOP) {
            return Optional.empty();
        }
        var base = base();
        double z = WorktopSize.top(frame) + shims();
        double table = z + machine.feet() + machine.reference().height();
        double highest = z + machine.feet() + machine.envelope().height();
        int turn = turned.turn();
        return Optional.of(new MachineLayout(
                upright(base, z, table),
                upright(shifted(turned.apply(envelope()), base), z, highest),
                machine.operator().turned(turn),
                machine.feed().infeed().map(side -> side.turned(turn)),
                bolts(base),
                centreOfMass(base, z)));
    }

    private Vec3 centreOfMass(Rect base, double z) {
        var size = machine.base();
        double height = machine.feet() + machine.envelope().height();
        var known = machine.centreOfMass();
        var seen = turned.apply(new Point2(
                known.map(CentreOfMass::x).orElse(size.width() / 2),
                known.map(CentreOfMass::y).orElse(size.depth() / 2)));
        double above = known.map(centre -> machine.feet() + centre.highest()).orElse(UNKNOWN_CENTRE * height);
        return new Vec3(base.x0() + seen.x(), base.y0() + seen.y(), z + above);
    }

    /** The base, the whole machine, and the shims under it. */
    List<Block> blocks(MachineLayout layout) {
        var blocks = new ArrayList<Block>();
        var base = layout.base();
        if (Grid.less(0, shims())) {
            blocks.add(new Block(
                    "shims under the machine",
                    Block.Kind.PAD,
                    new Box3(
                            new Vec3(base.min().x(), base.min().y(), WorktopSize.top(frame)),
                            new Vec3(base.max().x(), base.max().y(), base.min().z()))));
        }
        if (Grid.less(base.min().z(), base.max().z())) {
            blocks.add(new Block("base of " + machine.name(), Block.Kind.MACHINE, base));
        }
        blocks.add(new Block(machine.name(), Block.Kind.MACHINE, layout.whole()));
        return blocks;
    }

    private double shims() {
        return frame.design().place().shims().map(Range::usual).orElse(0.0);
    }

    /** The turned base seen from above. */
    private Rect base() {
        var size = turned.size();
        var margins = frame.design().place().margins();
        var plan = frame.design().plan();
        var top = WorktopSize.outline(frame);
        double x = (frame.width() - size.width()) / 2;
        if (margins.left().isPresent() || plan.width().isEmpty()) {
            x = top.x0() + margins.left().orElse(0);
        } else if (margins.right().isPresent()) {
            x = top.x1() - margins.right().getAsDouble() - size.width();
        }
        double y = (frame.depth() - size.depth()) / 2;
        if (margins.front().isPresent() || plan.depth().isEmpty()) {
            y = top.y0() + margins.front().orElse(0);
        } else if (margins.back().isPresent()) {
            y = top.y1() - margins.back().getAsDouble() - size.depth();
        }
        return new Rect(x, y, x + size.width(), y + size.depth());
    }

    /** The whole machine, in the frame of its base. */
    private Rect envelope() {
        var whole = machine.envelope();
        double left = whole.left().orElse((whole.width() - machine.base().width()) / 2);
        double front = whole.front().orElse((whole.depth() - machine.base().depth()) / 2);
        return new Rect(-left, -front, whole.width() - left, whole.depth() - front);
    }

    private List<Point2> bolts(Rect base) {
        return machine.mounting().stream()
                .flatMap(mounting -> mounting.holes().stream()
                        .map(hole -> new Point2(
                                mounting.origin().x() + hole.x(),
                                mounting.origin().y() + hole.y())))
                .map(turned::apply)
                .map(hole -> new Point2(base.x0() + hole.x(), base.y0() + hole.y()))
                .toList();
    }

    private static Rect shifted(Rect area, Rect base) {
        return new Rect(area.x0() + base.x0(), area.y0() + base.y0(), area.x1() + base.x0(), area.y1() + base.y0());
    }

    private static Box3 upright(Rect area, double z0, double z1) {
        return new Box3(new Vec3(area.x0(), area.y0(), z0), new Vec3(area.x1(), area.y1(), z1));
    }
}
