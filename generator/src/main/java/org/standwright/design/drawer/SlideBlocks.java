package org.standwright.design.drawer;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.design.Hang;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.column.DrawerFit;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Slide;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/** The slides as blocks: they fill the space beside the boxes exactly and belong to the carcass. */
public final class SlideBlocks {
    private final Frame frame;

    public SlideBlocks(Frame frame) {
        this.frame = frame;
    }

    /** Two for each drawer, bay by bay from top to bottom; none where drawers run on runners. */
    public List<Block> of(List<BayLayout> bays) {
        return frame.design().drawers().hang() instanceof Hang.Slides slides
                ? bays.stream()
                        .flatMap(bay -> bay.leaves(SectionLayout.Drawers.class))
                        .flatMap(row -> row(row, slides.slide()))
                        .toList()
                : List.of();
    }

    private Stream<Block> row(SectionLayout.Drawers row, Slide slide) {
        return row.drawers().stream().flatMap(drawer -> pair(drawer, row.opening(), slide));
    }

    private Stream<Block> pair(DrawerLayout drawer, Rect opening, Slide slide) {
        return Stream.of(
                block("left", drawer, opening.x0(), slide),
                block("right", drawer, opening.x1() - slide.sideSpace(), slide));
    }

    private Block block(String side, DrawerLayout drawer, double x, Slide slide) {
        double y = DrawerFit.slideFront(frame);
        double z = frame.openingBottom() + drawer.slideLineOnSide().orElseThrow() - slide.bodyHeight() / 2;
        double length = drawer.slide().orElseThrow().length();
        return new Block(
                "slide " + drawer.name() + " " + side,
                Block.Kind.SLIDE,
                new Box3(new Vec3(x, y, z), new Vec3(x + slide.sideSpace(), y + length, z + slide.bodyHeight())));
    }
}
