package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.WallDesign;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.built.Backing;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.MadeHolder;
import org.standwright.design.wall.built.Strip;
import org.standwright.design.wall.built.Unplaced;
import org.standwright.design.wall.row.Screwing;
import org.standwright.design.wall.row.StripParts;
import org.standwright.design.wall.row.WallRows;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.part.Part;

/** Walls whose holders are plain boards with a ledge, hung in the order of the design wherever they fit first. */
public final class HandHung {
    private final WallDesign design;
    private final List<HungHolder> hung = new ArrayList<>();

    private HandHung(WallDesign design) {
        this.design = design;
    }

    public static CleatWall of(WallDesign design) {
        return new HandHung(design).built();
    }

    private CleatWall built() {
        var walls = WallRows.of(design);
        var unplaced = new ArrayList<Unplaced>();
        for (var holder : design.holders()) {
            var made = made(holder);
            place(made, walls)
                    .ifPresentOrElse(
                            hung::add,
                            () -> unplaced.add(new Unplaced(holder, "No row has room for a holder that wide.")));
        }
        var screwing = Screwing.of(design);
        var groups = walls.stream()
                .map(wall -> Group.fixed(wall.wall().name(), StripParts.of(wall, design.cleat(), screwing), List.of()))
                .toList();
        return new CleatWall(design, screwing, walls, hung, unplaced, new Assembly(design.name(), groups, List.of()));
    }

    private MadeHolder made(Holder holder) {
        var things = holder.things();
        double width = Math.min(900, things.count() * (things.width() + 20) + 40);
        double above = design.cleat().hangerAbove() + 20;
        double below = 150;
        double t = design.making().sheet().material().thickness();
        double front = -design.cleat().thickness();
        var material = design.making().sheet().material();
        var back = new PlacedPart(
                holder.name() + " back",
                Part.blank("back", material, width, above + below),
                new Placement(Axis.X_PLUS, Axis.Z_PLUS, new Vec3(0, front, -below)));
        var ledge = new PlacedPart(
                holder.name() + " ledge",
                Part.blank("ledge", material, width, things.depth()),
                new Placement(Axis.X_PLUS, Axis.Y_MINUS, new Vec3(0, front - t, -below)));
        double top = Math.max(above, things.height() - below);
        var box = new Box3(new Vec3(0, front - t - things.depth(), -below - t), new Vec3(width, 0, top));
        return new MadeHolder(
                holder,
                box,
                new Rect(0, -below, width, above),
                List.of(back, ledge),
                List.of(),
                new Vec3(width / 2, front - t - things.depth() / 2, 0),
                -front + t + things.depth(),
                4);
    }

    private Optional<HungHolder> place(MadeHolder made, List<CleatedWall> walls) {
        for (var wall : walls) {
            for (var strip : wall.strips()) {
                for (double x = strip.along().from(); x <= strip.along().to(); x += 25) {
                    var place = new HungHolder(made, wall.number(), strip.row(), strip.top(), x, backing(), false);
                    if (isFree(place, strip, wall)) {
                        return Optional.of(place);
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static Backing backing() {
        return new Backing(Backing.By.SPACER, 150);
    }

    private boolean isFree(HungHolder place, Strip strip, CleatedWall wall) {
        return strip.along().holds(place.along())
                && wall.zones().stream().noneMatch(zone -> overlap(zone.kept(), place.area()))
                && hung.stream()
                        .filter(other -> other.wall() == place.wall())
                        .noneMatch(other -> overlap(other.area(), place.area()));
    }

    private static boolean overlap(Rect a, Rect b) {
        return a.x0() < b.x1() && b.x0() < a.x1() && a.y0() < b.y1() && b.y0() < a.y1();
    }
}
