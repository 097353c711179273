package org.standwright;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.LoadedStand;
import org.standwright.check.Weight;
import org.standwright.design.Support;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.kit.Side;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/**
 * The statics of tipping once more, in another way: torques as cross products in space; edges found by turning a
 * direction round the stand until another foot reaches farther; contents sorted by their own ratios.
 */
final class OtherStatics {
    private static final double G = 9.80665;
    private static final double MOST = 99;

    private final LoadedStand loaded;
    private final List<Foot> feet;

    OtherStatics(LoadedStand loaded) {
        this.loaded = loaded;
        this.feet = feet();
    }

    private record Foot(double x, double y, double radius) {
        double reach(double angle) {
            return x * Math.cos(angle) + y * Math.sin(angle) - radius;
        }
    }

    /** A force at a point, one of those that may be missing or not. */
    record Pull(Vec3 at, Vec3 force, boolean optional) {}

    /** A line on the floor: a point of it, its direction, and the way a stand falls over it. */
    record Hinge(Vec3 point, Vec3 axis, Vec3 out) {}

    /** Torques that hold and that tip, of one thing. */
    private record Torque(double holds, double tips, boolean optional) {
        double ratio() {
            return tips == 0 ? Double.POSITIVE_INFINITY : holds / tips;
        }
    }

    List<Hinge> hinges() {
        var hinges = new ArrayList<Hinge>();
        int steps = 7200;
        for (int i = 0; i < steps; i++) {
            double low = 2 * Math.PI * (i + 0.1234567) / steps;
            double high = 2 * Math.PI * (i + 1.1234567) / steps;
            int before = farthest(low);
            if (farthest(high) != before) {
                for (int halving = 0; halving < 80; halving++) {
                    double middle = (low + high) / 2;
                    if (farthest(middle) == before) {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
                hinges.add(hinge(low, feet.get(before)));
            }
        }
        return hinges;
    }

    private static Hinge hinge(double angle, Foot foot) {
        var out = new Vec3(Math.cos(angle), Math.sin(angle), 0);
        var touches = new Vec3(foot.x(), foot.y(), 0).minus(out.times(foot.radius()));
        return new Hinge(touches, cross(new Vec3(0, 0, 1), out), out);
    }

    private int farthest(double angle) {
        int best = 0;
        for (int i = 1; i < feet.size(); i++) {
            if (feet.get(i).reach(angle) > feet.get(best).reach(angle)) {
                best = i;
            }
        }
        return best;
    }

    /** The least ratio over all edges when these groups are open and these forces act besides, the worst of them. */
    double ratio(Set<String> open, double slope, ToForces forces) {
        return hinges().stream()
                .mapToDouble(hinge -> Stream.concat(
                                Stream.of(List.<Pull>of()),
                                forces.at(hinge).stream().map(List::of))
                        .skip(forces.at(hinge).isEmpty() ? 0 : 1)
                        .mapToDouble(extra -> ratio(hinge, open, slope, extra))
                        .min()
                        .orElseThrow())
                .min()
                .orElseThrow();
    }

    /** Forces of which one acts, for an edge. */
    interface ToForces {
        List<Pull> at(Hinge hinge);
    }

    private double ratio(Hinge hinge, Set<String> open, double slope, List<Pull> extra) {
        double lean = Math.toRadians(slope);
        var torques = new ArrayList<Torque>();
        for (var weight : loaded.weights()) {
            boolean optional = weight.kind() == Weight.Kind.CONTENTS;
            var at = open.contains(weight.group()) ? opened(weight) : weight.centre();
            var down = new Vec3(0, 0, -weight.mass() * G * Math.cos(lean));
            var along = hinge.out().times(weight.mass() * G * Math.sin(lean));
            var torque = sum(torque(hinge, at, down), torque(hinge, at, along), optional);
            torques.add(torque);
        }
        for (var pull : extra) {
            var force = pull.force();
            torques.add(sum(
                    torque(hinge, pull.at(), new Vec3(0, 0, force.z())),
                    torque(hinge, pull.at(), new Vec3(force.x(), force.y(), 0)),
                    false));
        }
        return least(torques);
    }

    private static double least(List<Torque> torques) {
        double holds = 0;
        double tips = 0;
        var rest = new ArrayList<Torque>();
        for (var torque : torques) {
            if (torque.optional()) {
                rest.add(torque);
            } else {
                holds += torque.holds();
                tips += torque.tips();
            }
        }
        rest.sort(Comparator.comparingDouble(Torque::ratio));
        for (var torque : rest) {
            if (torque.tips() > 0 && (tips == 0 || torque.ratio() < holds / tips)) {
                holds += torque.holds();
                tips += torque.tips();
            }
        }
        return tips == 0 ? MOST : Math.min(MOST, holds / tips);
    }

    private static double torque(Hinge hinge, Vec3 at, Vec3 force) {
        var torque = cross(at.minus(hinge.point()), force);
        return torque.x() * hinge.axis().x() + torque.y() * hinge.axis().y();
    }

    private static Torque sum(double first, double second, boolean optional) {
        return new Torque(
                Math.max(0, -first) + Math.max(0, -second), Math.max(0, first) + Math.max(0, second), optional);
    }

    /** A drawer moves by its travel; a door turns by 90 degrees about the upright through its hinges' outer corner. */
    private Vec3 opened(Weight weight) {
        var group = loaded.stand().assembly().groups().stream()
                .filter(candidate -> candidate.name().equals(weight.group()))
                .findFirst()
                .orElseThrow();
        if (!group.name().startsWith("door")) {
            return weight.centre().plus(group.travel());
        }
        var box = Box3.around(group.boxes().toList());
        boolean left = doors().filter(door -> group.name().equals("door " + door.name()))
                .allMatch(door -> door.hung() == Side.LEFT);
        double x = left ? box.min().x() : box.max().x();
        double turn = Math.toRadians(left ? -90 : 90);
        double dx = weight.centre().x() - x;
        double dy = weight.centre().y() - box.min().y();
        return new Vec3(
                x + dx * Math.cos(turn) - dy * Math.sin(turn),
                box.min().y() + dx * Math.sin(turn) + dy * Math.cos(turn),
                weight.centre().z());
    }

    Set<String> drawers() {
        return groups("drawer ");
    }

    Set<String> allOpenings() {
        var all = groups("drawer ");
        all.addAll(groups("door "));
        return all;
    }

    /** All ways in which one drawer of every column stands open, and every door. */
    List<Set<String>> combinations() {
        var ways = new ArrayList<Set<String>>();
        ways.add(groups("door "));
        for (var column : columns()) {
            var more = new ArrayList<Set<String>>();
            for (var way : ways) {
                for (var drawer : column) {
                    var one = new LinkedHashSet<>(way);
                    one.add(drawer);
                    more.add(one);
                }
            }
            ways.clear();
            ways.addAll(more);
        }
        return ways;
    }

    /** Drawers by their names: those of bay 2a are called 2a.1, 2a.2. */
    private List<List<String>> columns() {
        var columns = new TreeMap<String, List<String>>();
        for (var drawer : drawers()) {
            columns.computeIfAbsent(drawer.substring(0, drawer.lastIndexOf('.')), bay -> new ArrayList<>())
                    .add(drawer);
        }
        return List.copyOf(columns.values());
    }

    private Set<String> groups(String prefix) {
        var names = new LinkedHashSet<String>();
        loaded.stand().assembly().groups().forEach(group -> {
            if (group.name().startsWith(prefix)) {
                names.add(group.name());
            }
        });
        return names;
    }

    private Stream<DoorLayout> doors() {
        return loaded.stand().bays().stream().flatMap(bay -> bay.doors().stream());
    }

    private List<Foot> feet() {
        var support = loaded.design().support();
        var kind = support instanceof Support.Casters
                ? Block.Kind.CASTER
                : support instanceof Support.Levelers ? Block.Kind.LEVELER : Block.Kind.PAD;
        var boxes = loaded.stand().assembly().blocks().stream()
                .filter(block -> block.kind() == kind && block.box().min().z() < 1e-6)
                .map(Block::box)
                .toList();
        if (boxes.isEmpty()) {
            boxes = loaded.stand().assembly().parts().stream()
                    .map(PlacedPart::box)
                    .filter(box -> box.min().z() < 1e-6)
                    .toList();
        }
        var found = new ArrayList<Foot>();
        for (var box : boxes) {
            if (kind == Block.Kind.PAD) {
                for (double x : new double[] {box.min().x(), box.max().x()}) {
                    found.add(new Foot(x, box.min().y(), 0));
                    found.add(new Foot(x, box.max().y(), 0));
                }
            } else {
                found.add(new Foot(box.centre().x(), box.centre().y(), trail(box)));
            }
        }
        return found;
    }

    private double trail(Box3 box) {
        if (!(loaded.design().support() instanceof Support.Casters casters)) {
            return 0;
        }
        var middle = loaded.stand().carcass().centre();
        ToDoubleFunction<Side> towards = side -> switch (side) {
            case FRONT -> middle.y() - box.centre().y();
            case BACK -> box.centre().y() - middle.y();
            case LEFT -> middle.x() - box.centre().x();
            case RIGHT -> box.centre().x() - middle.x();
        };
        var machine = loaded.design().machine();
        boolean near = towards.applyAsDouble(
                        machine.operator().turned(loaded.design().place().turn()))
                > 0;
        var caster = near ? casters.caster() : casters.others().orElse(casters.caster());
        return Math.max(0, caster.swivelRadius() - caster.wheel() / 2);
    }

    private static Vec3 cross(Vec3 a, Vec3 b) {
        return new Vec3(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }
}
