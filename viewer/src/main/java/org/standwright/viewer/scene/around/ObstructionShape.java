package org.standwright.viewer.scene.around;

import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.viewer.scene.surface.Surface;
import org.standwright.viewer.scene.surface.SurfaceBuilder;

/** What one obstacle of a wall looks like. Depths are in the wall's frame: into the wall, below 0 before it, mm. */
final class ObstructionShape {
    /** How far plates and trim stand out where nothing is said; common practice, no source. */
    private static final double PLATE = 6;

    private static final double TRIM = 15;

    /** Where the leaf of a door or the pane of a window is, within the thickness of the wall. */
    private static final double LEAF_FRONT = 15;

    private static final double LEAF_BACK = 45;

    /** How far words stand before what they are written on. */
    private static final double WORDS = 2;

    private final CleatedWall wall;
    private final Zone zone;
    private final Obstacle obstacle;

    ObstructionShape(CleatedWall wall, Zone zone) {
        this.wall = wall;
        this.zone = zone;
        this.obstacle = wall.wall().obstacles().get(zone.at());
    }

    Obstruction obstruction() {
        return new Obstruction(
                zone.kind(),
                new SurfaceBuilder().box(box(zone.itself(), front(), back())).build(),
                casing(),
                sign());
    }

    private double front() {
        if (Grid.less(0, zone.depth())) {
            return -zone.depth();
        }
        return Obstruction.isOpening(zone.kind()) ? LEAF_FRONT : -PLATE;
    }

    private double back() {
        return Obstruction.isOpening(zone.kind()) ? LEAF_BACK : 0;
    }

    /** Beside and above an opening; below it, too, where that does not end at the lower edge of the wall. */
    private Surface casing() {
        double width = obstacle.casing();
        var builder = new SurfaceBuilder();
        if (!Grid.less(0, width) || !Obstruction.isOpening(zone.kind())) {
            return builder.build();
        }
        var in = zone.itself();
        boolean hasSill = Grid.less(wall.outline().bounds().y0(), in.y0());
        double low = hasSill ? in.y0() - width : in.y0();
        builder.box(trim(new Rect(in.x0() - width, low, in.x0(), in.y1() + width)));
        builder.box(trim(new Rect(in.x1(), low, in.x1() + width, in.y1() + width)));
        builder.box(trim(new Rect(in.x0(), in.y1(), in.x1(), in.y1() + width)));
        if (hasSill) {
            builder.box(trim(new Rect(in.x0(), low, in.x1(), in.y0())));
        }
        return builder.build();
    }

    private Box3 trim(Rect area) {
        return box(area, -TRIM, 0);
    }

    private Box3 box(Rect area, double front, double back) {
        return wall.frame()
                .apply(new Box3(new Vec3(area.x0(), front, area.y0()), new Vec3(area.x1(), back, area.y1())));
    }

    private Sign sign() {
        var area = zone.itself();
        var centre = new Vec3((area.x0() + area.x1()) / 2, front() - WORDS, (area.y0() + area.y1()) / 2);
        return new Sign(zone.name(), wall.frame().apply(centre), wall.frame().right(), area.width(), area.height());
    }
}
