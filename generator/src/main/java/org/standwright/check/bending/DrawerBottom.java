package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.LoadedStand;
import org.standwright.check.Weight;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.Stand;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.unit.Gravity;

/** The bottom of one drawer, full: a plate in a groove on all four sides. */
record DrawerBottom(DrawerLayout drawer, PlacedPart part, PlacedPart side, PlatePanel plate, double mass, double room) {
    static List<DrawerBottom> of(LoadedStand loaded) {
        var bottoms = new ArrayList<DrawerBottom>();
        for (var bay : loaded.stand().bays()) {
            bay.drawers().forEach(drawer -> bottoms.add(of(drawer, loaded)));
        }
        return bottoms;
    }

    private static DrawerBottom of(DrawerLayout drawer, LoadedStand loaded) {
        var name = "drawer " + drawer.name();
        var part = Named.part(loaded.stand(), name + " bottom");
        var inside = drawer.inside();
        double contents = loaded.weights().stream()
                .filter(weight ->
                        weight.kind() == Weight.Kind.CONTENTS && weight.group().equals(name))
                .mapToDouble(Weight::mass)
                .sum();
        return new DrawerBottom(
                drawer,
                part,
                Named.part(loaded.stand(), name + " left side"),
                new PlatePanel(
                        inside.width(),
                        inside.depth(),
                        part.part().thickness(),
                        GrainWay.modulus(part, Axis.X_PLUS),
                        GrainWay.modulus(part, Axis.Y_PLUS)),
                contents,
                room(part, name, loaded.stand()));
    }

    /** From its underside to the next thing below it that does not move with it, mm. */
    private static double room(PlacedPart bottom, String group, Stand stand) {
        var box = bottom.box();
        double below = stand.assembly().groups().stream()
                .filter(other -> !other.name().equals(group))
                .flatMap(other -> other.boxes())
                .filter(other -> isUnder(other, box))
                .mapToDouble(other -> other.max().z())
                .max()
                .orElse(0);
        return box.min().z() - below;
    }

    private static boolean isUnder(Box3 other, Box3 box) {
        return !Grid.less(box.min().z(), other.max().z())
                && Grid.less(other.min().x(), box.max().x())
                && Grid.less(box.min().x(), other.max().x())
                && Grid.less(other.min().y(), box.max().y())
                && Grid.less(box.min().y(), other.max().y());
    }

    String label() {
        return "drawer " + drawer.name();
    }

    /** What lies on it and itself, N/mm². */
    double pressure() {
        double area = plate.overX() * plate.overY();
        return Gravity.newtons(mass) / area + LayerWeight.of(part.part().material());
    }

    /** Of its middle, after years, mm. */
    double sag() {
        return GrainWay.creep(part).longTerm(plate.uniform(pressure()));
    }

    /** Whether it sags more at once than the theory of plates holds for. */
    boolean isDeep() {
        return !plate.believes(plate.uniform(pressure()));
    }

    /** How far it reaches into the groove of a side, mm. */
    double engagement() {
        return side.box().max().x() - part.box().min().x();
    }

    /** Wood of a side below the groove, mm. */
    double lip() {
        return part.box().min().z() - side.box().min().z();
    }

    /** Shear in the wood below the groove, N/mm²: one and a half times its mean over the lip's height. */
    double lipShear() {
        return 1.5 * plate.reaction(pressure()) / lip();
    }
}
