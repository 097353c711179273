package org.standwright.check;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.design.Support;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Size3;
import org.standwright.design.kit.Slide;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.solid.AssemblySolids;

/** Puts together what weighs on a stand. Hinges, pulls, screws and bolts are left out: grams beside kilograms. */
final class Weighing {
    /** Of the two members of a slide's side, one moves with the drawer; so each weighs a quarter of the pair. */
    private static final double MEMBER = 0.25;

    private static final double CUBIC_METRES = 1e-9;
    private static final String CARCASS = "carcass";
    private final Stand stand;
    private final List<Weight> weights = new ArrayList<>();

    Weighing(Stand stand) {
        this.stand = stand;
    }

    List<Weight> all(AssemblySolids solids) {
        for (var solid : solids.solids()) {
            var body = solid.massProperties();
            weights.add(new Weight(solid.label(), Weight.Kind.BOARD, solid.group(), body.mass(), body.centre()));
        }
        feet();
        stand.bays().stream().flatMap(bay -> bay.drawers().stream()).forEach(this::drawer);
        weights.addAll(new ShelfContents(stand).all());
        machine();
        ballast();
        return weights;
    }

    private void feet() {
        for (var group : stand.assembly().groups()) {
            for (var block : group.blocks()) {
                double mass = foot(block);
                if (mass > 0) {
                    weights.add(new Weight(
                            block.label(),
                            Weight.Kind.HARDWARE,
                            group.name(),
                            mass,
                            block.box().centre()));
                }
            }
        }
    }

    private double foot(Block block) {
        var support = stand.design().support();
        if (block.kind() == Block.Kind.CASTER && support instanceof Support.Casters casters) {
            return casters.others()
                    .map(others -> Math.min(others.mass(), casters.caster().mass()))
                    .orElseGet(() -> casters.caster().mass());
        }
        return block.kind() == Block.Kind.LEVELER && support instanceof Support.Levelers levelers
                ? levelers.leveler().mass()
                : 0;
    }

    /**
     * Its contents in the middle of its usable inside (EN 14749), and its slides where they are closed. A front without a
     * bottom behind it holds nothing.
     */
    private void drawer(DrawerLayout drawer) {
        var name = "drawer " + drawer.name();
        group(name).parts().stream()
                .filter(part -> part.label().equals(name + " bottom"))
                .findFirst()
                .ifPresent(bottom -> weights.add(contents(name, drawer.inside(), bottom.box())));
        drawer.slide().ifPresent(slide -> slides(drawer, slide));
    }

    private Weight contents(String drawer, Size3 inside, Box3 bottom) {
        double volume = inside.width() * inside.depth() * inside.height() * CUBIC_METRES;
        return new Weight(
                "contents of " + drawer,
                Weight.Kind.CONTENTS,
                drawer,
                volume * stand.design().loads().drawers(),
                new Vec3(bottom.centre().x(), bottom.centre().y(), bottom.max().z() + inside.height() / 2));
    }

    private void slides(DrawerLayout drawer, Slide.Size slide) {
        if (slide.mass() == 0) {
            return;
        }
        var sides = List.of("slide " + drawer.name() + " left", "slide " + drawer.name() + " right");
        group(CARCASS).blocks().stream()
                .filter(block -> sides.contains(block.label()))
                .forEach(block -> {
                    for (var group : List.of(CARCASS, "drawer " + drawer.name())) {
                        weights.add(new Weight(
                                block.label(),
                                Weight.Kind.HARDWARE,
                                group,
                                slide.mass() * MEMBER,
                                block.box().centre()));
                    }
                });
    }

    /** A machine below the worktop hangs from it: it counts at the worktop's upper face, which is higher than it is. */
    private void machine() {
        var machine = stand.design().machine();
        var centre = stand.machine().map(layout -> layout.centreOfMass()).orElseGet(() -> {
            var box = stand.assembly().blocks().stream()
                    .filter(block -> block.kind() == Block.Kind.PLATE)
                    .findFirst()
                    .map(Block::box)
                    .orElseGet(stand::worktop);
            return new Vec3(box.centre().x(), box.centre().y(), box.max().z());
        });
        weights.add(new Weight(machine.name(), Weight.Kind.MACHINE, "machine", machine.mass(), centre));
    }

    private void ballast() {
        double ballast = stand.design().steady().ballast();
        if (ballast > 0) {
            var under = stand.carcass();
            var centre =
                    new Vec3(under.centre().x(), under.centre().y(), under.min().z());
            weights.add(new Weight("ballast", Weight.Kind.BALLAST, CARCASS, ballast, centre));
        }
    }

    private Group group(String name) {
        return stand.assembly().groups().stream()
                .filter(group -> group.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
