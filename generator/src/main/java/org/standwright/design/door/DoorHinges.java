package org.standwright.design.door;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.design.frame.SideBore;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Side;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/** What the hinges of all doors need of the carcass: screws in its uprights and room in its openings. */
public final class DoorHinges {
    private final Frame frame;
    private final List<BayLayout> bays;
    private final ScrewChoice screws;

    public DoorHinges(Frame frame, List<BayLayout> bays) {
        this.frame = frame;
        this.bays = bays;
        this.screws = new ScrewChoice(frame.design());
    }

    /** Pilots in the uprights; those in a partition stay within its half, whatever hangs on its other face. */
    public List<SideBore> pilots() {
        return closed().flatMap(section ->
                        section.doors().stream().flatMap(door -> pilots(door, section.opening()).stream()))
                .toList();
    }

    /** Arms and plates of concealed hinges, which shelves must clear; butt hinges lie in the gap. */
    public List<Block> blocks() {
        return closed().flatMap(section -> section.doors().stream().flatMap(door -> blocks(door, section.opening())))
                .toList();
    }

    private Stream<SectionLayout.Closed> closed() {
        return bays.stream().flatMap(bay -> bay.leaves(SectionLayout.Closed.class));
    }

    private List<SideBore> pilots(DoorLayout door, Rect opening) {
        var mount = HingeMount.of(frame.design(), door.hinge());
        double x = wall(door, opening);
        var family = frame.design().screws();
        double pilot = door.hinge() instanceof Hinge.Butt
                ? family.panel().pilot()
                : family.slide().pilot();
        double depth = depth(door, x);
        var bores = new ArrayList<SideBore>();
        for (double height : door.hinges()) {
            for (double above : mount.screwsAbove()) {
                double z = door.front().y0() + height + above;
                bores.add(new SideBore(door.hung(), x, mount.screwsBehindEdge(), z, pilot, depth, mount.purpose()));
            }
        }
        return bores;
    }

    /** How deep the screws go into the upright at {@code x}, mm: a butt hinge has a leaf under their heads. */
    private double depth(DoorLayout door, double x) {
        return screw(door, x) - (door.hinge() instanceof Hinge.Butt butt ? butt.thickness() : 0);
    }

    /** Length of the screws in the upright at {@code x}, mm. */
    double screw(DoorLayout door, double x) {
        if (door.hinge() instanceof Hinge.Butt butt) {
            return new ButtMount(frame.design(), butt).screw(isMet(door, butt, x));
        }
        boolean side = Grid.same(x, frame.panel()) || Grid.same(x, frame.width() - frame.panel());
        return side ? screws.hingeInto(frame.panel()) : screws.hingeIntoShared(frame.panel());
    }

    /** Whether something on the far face of the upright at {@code x} lies at the height of one of these hinges. */
    private boolean isMet(DoorLayout door, Hinge.Butt butt, double x) {
        double far = door.hung() == Side.LEFT ? x - frame.panel() : x + frame.panel();
        var face = new FarFace(bays, frame.panel());
        return door.hinges().stream()
                .mapToDouble(height -> door.front().y0() + height)
                .anyMatch(z -> face.meets(far, z - butt.length() / 2, z + butt.length() / 2));
    }

    static double wall(DoorLayout door, Rect opening) {
        return door.hung() == Side.LEFT ? opening.x0() : opening.x1();
    }

    private Stream<Block> blocks(DoorLayout door, Rect opening) {
        if (!(door.hinge() instanceof Hinge.Concealed hinge)) {
            return Stream.empty();
        }
        double front = new ConcealedMount(frame.design(), hinge).behindEdge();
        double x = door.hung() == Side.LEFT ? opening.x0() : opening.x1() - hinge.reach();
        return IntStream.range(0, door.hinges().size()).mapToObj(i -> {
            double z = door.front().y0() + door.hinges().get(i);
            return new Block(
                    "hinge " + (i + 1) + " of door " + door.name(),
                    Block.Kind.HINGE,
                    new Box3(
                            new Vec3(x, front, z - hinge.height() / 2),
                            new Vec3(x + hinge.reach(), front + hinge.depth(), z + hinge.height() / 2)));
        });
    }
}
