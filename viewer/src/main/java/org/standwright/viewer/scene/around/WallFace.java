package org.standwright.viewer.scene.around;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.CleatedWall;
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

    /** How far studs are drawn behind the strips' backs, mm. */
    private static final double STUDS_BEHIND = 1.5;

    public WallFace {
        obstructions = List.copyOf(obstructions);
        swings = List.copyOf(swings);
    }

    public static WallFace of(CleatedWall wall) {
        var area = area(wall);
        return new WallFace(
                wall.wall().name(),
                slab(wall, area),
                studs(wall, area),
                wall.zones().stream()
                        .map(zone -> new ObstructionShape(wall, zone).obstruction())
                        .toList(),
                wall.zones().stream()
                        .flatMap(zone -> wall.wall().obstacles().get(zone.at()).swing().stream()
                                .map(swing -> new DoorSwing(wall.frame(), zone.itself(), swing)))
                        .toList());
    }

    /** Its outline without its openings. */
    private static Geometry area(CleatedWall wall) {
        Geometry area = FlatRegion.polygon(wall.outline());
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

    private static Vec3 place(CleatedWall wall, Vec2 at, double behind) {
        return wall.frame().apply(new Vec3(at.x(), behind, at.y()));
    }
}
