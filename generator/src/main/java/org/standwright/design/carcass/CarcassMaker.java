package org.standwright.design.carcass;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.built.BayLayout;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.SideBore;
import org.standwright.design.top.TopScrews;
import org.standwright.part.Banding;
import org.standwright.part.Hole;

/**
 * Sides, bottom, sub-top, partitions, dividers, shelves and back. Housed, bottom and sub-top lie in rabbets at the ends of
 * the sides, the back in rabbets along their rear edges and over the rear edges of the rest. Butted, bottom and sub-top
 * stand between the sides, partitions between the two, and the back lies over the rear edges of all; {@link ButtJoints}
 * bores them. Dividers, fixed shelves and partitions within a bay are housed in either.
 */
public final class CarcassMaker {
    private final Frame frame;
    private final List<BayLayout> bays;
    private final Panels panels;
    private final UprightMaker uprights;
    private final LevelMaker levels;

    /**
     * @throws org.standwright.design.ImpossibleDesignException when its panels are too thin to be housed in each other
     */
    public CarcassMaker(Frame frame, List<BayLayout> bays) {
        this.frame = frame;
        this.bays = bays;
        this.panels = new Panels(frame, bays);
        new Housing(frame).check(panels);
        Optional<Banding> band =
                frame.design().edges().carcass().map(edging -> new Banding(edging.name(), edging.thickness()));
        this.uprights = new UprightMaker(frame, band, panels.inner());
        this.levels = new LevelMaker(frame, band, panels.partitions());
    }

    /**
     * All parts at their places.
     *
     * @param bores holes in the walls of openings, each made in the side or partition whose face lies there
     */
    public Group carcass(List<Hole> bottomHoles, List<SideBore> bores, List<Block> slides) {
        uprights.check(bores, panels.partitions());
        var parts = new ArrayList<PlacedPart>();
        parts.add(uprights.leftSide(bores));
        parts.add(uprights.rightSide(bores));
        parts.add(levels.bottom(bottomHoles));
        parts.add(levels.subTop(new TopScrews(frame, bays).places()));
        panels.partitions().forEach(partition -> parts.add(uprights.partition(partition, bores)));
        panels.inner().forEach(level -> parts.add(levels.inner(level)));
        var boards = new ShelfBoards(frame);
        bays.forEach(bay -> parts.addAll(boards.boards(bay)));
        parts.addAll(new BackMaker(frame).pieces());
        return Group.fixed("carcass", parts, slides);
    }
}
