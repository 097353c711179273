package org.standwright.check.fastener;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.Stand;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Material;

/**
 * The pilot holes of one member of a slide.
 *
 * @param part that they are in
 * @param onBox whether that is of the drawer and moves with it
 * @param screws where they are along the assembly's y axis with the drawer closed, mm
 * @param into how deep the shallowest is, mm
 */
record SlideRow(String part, boolean onBox, Material material, ScrewRow screws, double into) {
    private static final String PILOT = "slide pilot";

    /** Of both members of both slides of a drawer. */
    static List<SlideRow> of(Stand stand, DrawerLayout drawer) {
        var slides = List.of("slide " + drawer.name() + " left", "slide " + drawer.name() + " right");
        return stand.assembly().blocks().stream()
                .filter(block -> slides.contains(block.label()))
                .map(Block::box)
                .flatMap(slide -> stand.assembly().parts().stream()
                        .flatMap(placed -> row(placed, slide, placed.label().startsWith("drawer " + drawer.name()))))
                .toList();
    }

    private static Stream<SlideRow> row(PlacedPart placed, Box3 slide, boolean onBox) {
        var holes = placed.part().features().stream()
                .filter(Hole.class::isInstance)
                .map(Hole.class::cast)
                .filter(hole -> hole.purpose().equals(PILOT) && isUnder(slide, entry(placed, hole)))
                .toList();
        if (holes.isEmpty()) {
            return Stream.empty();
        }
        var places = holes.stream().map(hole -> entry(placed, hole).y()).toList();
        ToDoubleFunction<Hole> depth = hole -> hole.depthIn(placed.part().thickness());
        return Stream.of(new SlideRow(
                placed.label(),
                onBox,
                placed.part().material(),
                new ScrewRow(places),
                holes.stream().mapToDouble(depth).min().orElseThrow()));
    }

    /** Whether a hole begins at one of the slide's two faces and is covered by it. */
    private static boolean isUnder(Box3 slide, Vec3 entry) {
        boolean atFace = Grid.same(entry.x(), slide.min().x())
                || Grid.same(entry.x(), slide.max().x());
        return atFace
                && entry.y() > slide.min().y()
                && entry.y() < slide.max().y()
                && entry.z() > slide.min().z()
                && entry.z() < slide.max().z();
    }

    private static Vec3 entry(PlacedPart placed, Hole hole) {
        double z = hole.face() == Face.SHOW ? placed.part().thickness() : 0;
        return placed.placement().apply(new Vec3(hole.x(), hole.y(), z));
    }
}
