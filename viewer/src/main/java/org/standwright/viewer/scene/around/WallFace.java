package org.standwright.viewer.scene.around;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;
import org.standwright.viewer.scene.surface.FlatRegion;
import org.standwright.viewer.scene.surface.Surface;
import org.standwright.viewer.scene.surface.SurfaceBuilder;

/**
 * The wall that cleats are screwed to.
 *
 * @param slab the wall itself, a little behind its true surface so that strips on it stand out clearly, open where it has
 *     doors and windows
 * @param studs where something behind the surface takes a screw, seen from the room
 */
public record WallFace(
        String name, Surface slab, Surface studs, List<Obstruction> obstructions, List<DoorSwing> swings) {
    /** How far the slab lies behind the strips' backs, mm. */
    private static final double BEHIND = 3;

    private static final double THICKNESS = 60;

    /** How far a slab reaches into the corner with the next wall, mm. */
    private static final double CORNER = BEHIND + THICKNESS;

    /** How far studs are drawn behind the strips' backs, mm. */
    private static final double STUDS_BEHIND = 1.5;

    public WallFace {
        obstructions = List.copyOf(obstructions);
        swings = List.copyOf(swings);
    }

    /** The wall of a number, 1 for the first. */
    public static WallFace of(CleatWall walls, int number) {
        var wall = walls.wall(number);
        var beyond =
                new Interval(number > 1 ? -CORNER : 0, number < walls.walls().size() ? CORNER : 0);
        return new WallFace(
                wall.wall().name(),
                slab(wall, withoutOpenings(wall, reaching(wall.outline(), beyond))),
                studs(wall, withoutOpenings(wall, wall.outline())),
                wall.zones().stream()
                        .map(zone -> new ObstructionShape(wall, zone).obstruction())
                        .toList(),
                wall.zones().stream()
                        .flatMap(zone -> wall.wall().obstacles().get(zone.at()).swing().stream()
                                .map(swing -> new DoorSwing(wall.frame(), zone.itself(), swing)))
                        .toList());
    }

    /** An outline with its ends further out, so that there is no gap in the corner where slabs meet. */
    private static Outline reaching(Outline outline, Interval beyond) {
        var bounds = outline.bounds();
        return outline.moved(corner -> corner.plus(new Vec2(
                Grid.same(corner.x(), bounds.x0())
                        ? beyond.from()
                        : Grid.same(corner.x(), bounds.x1()) ? beyond.to() : 0,
                0)));
    }

    private static Geometry withoutOpenings(CleatedWall wall, Outline outline) {
        Geometry area = FlatRegion.polygon(outline);
        for (Zone zone : wall.zones()) {
            if (Obstruction.isOpening(zone.kind())) {
                area = area.difference(FlatRegion.polygon(Outline.of(zone.itself())));
            }
        }
        return area;
    }

    private static Surface slab(CleatedWall wall, Geometry area) {
        var builder = new SurfaceBuilder();
        FlatRegion.of(area)
                .forEach(region ->
                        builder.slab(region, at -> place(wall, at, BEHIND), at -> place(wall, at, BEHIND + THICKNESS)));
        return builder.build();
    }

    private static Surface studs(CleatedWall wall, Geometry area) {
        var bounds = wall.outline().bounds();
        var builder = new SurfaceBuilder();
        for (var stud : wall.studs()) {
            if (stud.width() > 0) {
                double half = stud.width() / 2;
                var strip = new Rect(stud.x() - half, bounds.y0(), stud.x() + half, bounds.y1());
                FlatRegion.of(area.intersection(FlatRegion.polygon(Outline.of(strip))))
                        .forEach(region -> builder.region(region, at -> place(wall, at, STUDS_BEHIND)));
            }
        }
        return builder.build();
    }

    /** Around its surface where it stands. */
    static Box3 box(CleatedWall wall) {
        var bounds = wall.outline().bounds();
        return wall.frame()
                .apply(new Box3(new Vec3(bounds.x0(), 0, bounds.y0()), new Vec3(bounds.x1(), 0, bounds.y1())));
    }

    private static Vec3 place(CleatedWall wall, Vec2 at, double behind) {
        return wall.frame().apply(new Vec3(at.x(), behind, at.y()));
    }
}
