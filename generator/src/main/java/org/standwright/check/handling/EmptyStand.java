package org.standwright.check.handling;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.check.LoadedStand;
import org.standwright.check.Weight;
import org.standwright.design.Joint;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/** What is carried: a stand with nothing in it, whole or with more and more of it taken off. */
final class EmptyStand {
    private static final String AS_IT_IS = "as it is";
    static final String APART = "taken apart";

    private final LoadedStand loaded;

    EmptyStand(LoadedStand loaded) {
        this.loaded = loaded;
    }

    /** Without machine, contents and ballast, kg. */
    double mass() {
        return mass(group -> true);
    }

    /** The same with its drawers taken out, kg. */
    double withoutDrawers() {
        return mass(group -> !group.moves());
    }

    /** Screws let the carcass's panels come apart again, and nothing is glued. */
    boolean comesApart() {
        return loaded.design().carcass().joint() instanceof Joint.Connected;
    }

    /** The heaviest thing that has to be carried at once, kg. */
    double heaviestLoad() {
        return comesApart() ? boards().max(Comparator.naturalOrder()).orElse(0.0) : withoutDrawers();
    }

    /** How it can be taken through a passage: first as it is with its machine, then without it, the least work first. */
    List<Load> loads() {
        boolean machine = loaded.stand().assembly().groups().stream().anyMatch(EmptyStand::isMachine);
        var whole = box(group -> true);
        var bare = box(group -> !isMachine(group));
        var light = box(
                group -> !isMachine(group) && !group.moves() && !group.name().equals("worktop"));
        var off = machine ? "with its machine taken off" : AS_IT_IS;
        var without = machine ? "without machine, worktop and drawers" : "without worktop and drawers";
        var ways = Stream.of(
                new Load(AS_IT_IS, whole, true),
                new Load(off, bare, true),
                new Load(machine ? off + " and laid down" : "laid down", bare, false),
                new Load(without, light, true),
                new Load(without + " and laid down", light, false));
        return (comesApart() ? Stream.concat(ways, Stream.of(inParts())) : ways).toList();
    }

    /** Panel by panel; the one with the widest narrow side decides. */
    private Load inParts() {
        var widest = loaded.stand().assembly().parts().stream()
                .map(part -> part.box().size())
                .max(Comparator.comparingDouble(size -> new Load("", size, false).middle()))
                .orElseThrow();
        return new Load(APART, widest, false);
    }

    private Vec3 box(Predicate<Group> carried) {
        return Box3.around(loaded.stand().assembly().groups().stream()
                        .filter(carried)
                        .flatMap(Group::boxes)
                        .toList())
                .size();
    }

    private static boolean isMachine(Group group) {
        return group.blocks().stream().anyMatch(block -> block.kind() == Block.Kind.MACHINE);
    }

    private double mass(Predicate<Group> carried) {
        var names = loaded.stand().assembly().groups().stream()
                .filter(carried)
                .map(Group::name)
                .toList();
        return loaded.weights().stream()
                .filter(weight -> weight.kind() == Weight.Kind.BOARD || weight.kind() == Weight.Kind.HARDWARE)
                .filter(weight -> names.contains(weight.group()))
                .mapToDouble(Weight::mass)
                .sum();
    }

    private Stream<Double> boards() {
        return loaded.weights().stream()
                .filter(weight -> weight.kind() == Weight.Kind.BOARD)
                .map(Weight::mass);
    }
}
