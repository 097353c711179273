package org.standwright.design.wall.build;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.WallDesign;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.built.Backing;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.MadeHolder;
import org.standwright.design.wall.holder.HolderMaker;
import org.standwright.design.wall.place.Arrangement;
import org.standwright.design.wall.row.StripParts;
import org.standwright.design.wall.row.StripScrews;
import org.standwright.design.wall.row.WallRows;
import org.standwright.geom.Vec3;

/** Works out walls of cleats: decisions in, everything at its place out. */
public final class WallBuilder {
    private final WallDesign design;
    private final HolderMaker maker;

    private WallBuilder(WallDesign design) {
        this.design = design;
        this.maker = new HolderMaker(design);
    }

    /**
     * Builds the walls.
     *
     * @throws org.standwright.design.ImpossibleDesignException when no such walls can be built; it names what would do
     */
    public static CleatWall build(WallDesign design) {
        return new WallBuilder(design).built();
    }

    private CleatWall built() {
        HolderNames.check(design);
        var screwing = StripScrews.of(design);
        var walls = WallRows.of(design);
        var arranged = Arrangement.of(design, walls, made());
        var groups = new ArrayList<Group>();
        walls.forEach(wall -> groups.add(
                Group.fixed(wall.wall().name() + " rows", StripParts.of(wall, design.cleat(), screwing), List.of())));
        arranged.hung().forEach(holder -> groups.add(group(walls.get(holder.wall() - 1), holder)));
        var hardware = new WallHardware(design, screwing, maker).list(walls, arranged.hung());
        return new CleatWall(
                design,
                screwing,
                walls,
                arranged.hung(),
                arranged.unplaced(),
                new Assembly(design.name(), groups, hardware));
    }

    private List<MadeHolder> made() {
        var made = new ArrayList<MadeHolder>();
        for (var holder : design.holders()) {
            made.add(maker.make(holder, "/holders/" + made.size()));
        }
        return made;
    }

    private Group group(CleatedWall wall, HungHolder holder) {
        var parts = new ArrayList<>(holder.made().parts());
        if (holder.backing().by() == Backing.By.SPACER) {
            parts.add(maker.spacer(holder.made()));
        }
        return Group.fixed(
                holder.name(),
                parts.stream().map(part -> hung(wall, holder, part)).toList(),
                List.of());
    }

    private static PlacedPart hung(CleatedWall wall, HungHolder holder, PlacedPart part) {
        var moved = part.placement().moved(new Vec3(holder.x(), 0, holder.rowHeight()));
        return new PlacedPart(part.label(), part.part(), wall.frame().apply(moved));
    }
}
