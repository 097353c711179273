package org.standwright.check;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.Hardware;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.StandDesign;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.Stand;
import org.standwright.part.Part;

/** Stands changed by hand into what no builder would build, weighed as they were. */
public final class Altered {
    private Altered() {}

    /** One part changed. */
    public static LoadedStand part(StandDesign design, String label, UnaryOperator<Part> change) {
        return groups(
                design,
                group -> new Group(
                        group.name(),
                        group.travel(),
                        group.parts().stream()
                                .map(placed -> placed.label().equals(label)
                                        ? new PlacedPart(label, change.apply(placed.part()), placed.placement())
                                        : placed)
                                .toList(),
                        group.blocks()));
    }

    /** A block more in the carcass. */
    public static LoadedStand block(StandDesign design, Block block) {
        return groups(
                design,
                group -> group.name().equals("carcass")
                        ? new Group(
                                group.name(),
                                group.travel(),
                                group.parts(),
                                Stream.concat(group.blocks().stream(), Stream.of(block))
                                        .toList())
                        : group);
    }

    /** A group left out. */
    public static LoadedStand without(StandDesign design, String name) {
        var loaded = Stands.loaded(design);
        var assembly = loaded.stand().assembly();
        var groups = assembly.groups().stream()
                .filter(group -> !group.name().equals(name))
                .toList();
        return with(loaded, new Assembly(assembly.name(), groups, assembly.hardware()));
    }

    /** Other hardware. */
    public static LoadedStand hardware(StandDesign design, Hardware... lines) {
        var loaded = Stands.loaded(design);
        var assembly = loaded.stand().assembly();
        return with(loaded, new Assembly(assembly.name(), assembly.groups(), List.of(lines)));
    }

    /** Every bay changed. */
    public static LoadedStand bays(StandDesign design, UnaryOperator<BayLayout> change) {
        var loaded = Stands.loaded(design);
        var stand = loaded.stand();
        var bays = stand.bays().stream().map(change).toList();
        return new LoadedStand(
                new Stand(stand.design(), stand.stack(), stand.carcass(), bays, stand.machine(), stand.assembly()),
                loaded.weights());
    }

    private static LoadedStand groups(StandDesign design, UnaryOperator<Group> change) {
        var loaded = Stands.loaded(design);
        var assembly = loaded.stand().assembly();
        var groups = assembly.groups().stream().map(change).toList();
        return with(loaded, new Assembly(assembly.name(), groups, assembly.hardware()));
    }

    private static LoadedStand with(LoadedStand loaded, Assembly assembly) {
        var stand = loaded.stand();
        return new LoadedStand(
                new Stand(stand.design(), stand.stack(), stand.carcass(), stand.bays(), stand.machine(), assembly),
                loaded.weights());
    }
}
