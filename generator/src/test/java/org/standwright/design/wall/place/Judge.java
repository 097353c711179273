package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.wall.Obstacle.Kind;
import org.standwright.design.wall.Swing;
import org.standwright.design.wall.Swing.Side;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.Backing;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.Row;

/**
 * Tells what is wrong with holders on walls by trying: every pair of boxes, points of hangers, of leaves of doors and of
 * the rim of the wall. Written without anything of the package but its constants; strips are 18 mm thick, 88 mm high, and a
 * holder is lifted 21 mm.
 */
final class Judge {
    private static final double EPS = 1e-3;
    private static final double LIFT = 21;

    private final List<CleatedWall> walls;

    Judge(List<CleatedWall> walls) {
        this.walls = walls;
    }

    /** A box in the room: x, y, z from and to. */
    private record Box(double[] from, double[] to) {
        boolean meets(Box other) {
            for (int i = 0; i < 3; i++) {
                if (from[i] >= other.to[i] - EPS || other.from[i] >= to[i] - EPS) {
                    return false;
                }
            }
            return true;
        }

        boolean holds(double[] point, double least) {
            for (int i = 0; i < 3; i++) {
                if (point[i] < from[i] + least || point[i] > to[i] - least) {
                    return false;
                }
            }
            return true;
        }
    }

    List<String> complaints(List<HungHolder> hung) {
        var wrong = new ArrayList<String>();
        for (int i = 0; i < hung.size(); i++) {
            wrong.addAll(complaints(hung.get(i), hung.subList(0, i)));
        }
        return wrong;
    }

    List<String> complaints(HungHolder holder, List<HungHolder> others) {
        var wrong = new ArrayList<String>();
        var name = holder.name();
        var wall = walls.get(holder.wall() - 1);
        others.forEach(other -> {
            if (holder.wall() == other.wall()
                    ? tooNear(holder, other)
                    : lifted(holder).meets(lifted(other))) {
                wrong.add(name + " meets " + other.name());
            }
        });
        if (!wrong.isEmpty()) {
            return wrong;
        }
        if (!borne(holder, wall)) {
            wrong.add(name + " is not borne");
        }
        if (!inside(holder, wall)) {
            wrong.add(name + " leaves the wall");
        }
        for (var zone : wall.zones()) {
            var area = holder.area();
            boolean beside = area.x1() <= zone.kept().x0() + EPS
                    || area.x0() >= zone.kept().x1() - EPS;
            boolean above = area.y0() >= zone.kept().y1() - EPS;
            boolean below = area.y1() + LIFT <= zone.kept().y0() + EPS;
            boolean burns = holder.made().holder().things().flammable() && isHot(zone.kind());
            if (!beside && (burns || !above && !below)) {
                wrong.add(name + " hangs before or above " + zone.name());
            }
        }
        walls.stream().filter(other -> other != wall).forEach(other -> across(holder, other, wrong));
        walls.forEach(any -> swings(holder, any, wrong));
        return wrong;
    }

    private static boolean isHot(Kind kind) {
        return kind == Kind.STAND || kind == Kind.RADIATOR || kind == Kind.ELECTRICAL_PANEL;
    }

    /** Whether a lower back finds the wall where it is said to, by points along it; what lies on edge is not judged. */
    boolean isBackedAsTold(HungHolder holder) {
        var back = holder.made().back();
        double bottom = holder.rowHeight() + back.y0();
        double own = holder.rowHeight() - 88;
        var lower = walls.get(holder.wall() - 1).rows().subList(0, holder.row() - 1);
        boolean room = bottom + 40 + LIFT <= own + EPS;
        for (var row : lower) {
            double touch = Math.max(bottom, row.height() - 88);
            double share = share(row, holder.x() + back.x0(), holder.x() + back.x1());
            boolean high = row.height() - touch >= 10 - EPS;
            if (high && Math.abs(share - 0.5) < 0.01) {
                return true;
            }
            if (high && share > 0.5) {
                return holder.backing().by() == Backing.By.LOWER_STRIP
                        && Math.abs(holder.backing().below() - (holder.rowHeight() - touch)) < EPS;
            }
            boolean beside = row.height() <= bottom + EPS || row.height() - 88 >= bottom + 40 + LIFT - EPS;
            if (!beside && share > 0 && share < 0.01) {
                return true;
            }
            room &= beside || share == 0;
        }
        double below = room ? -back.y0() : holder.rowHeight() - Math.max(bottom, own);
        return holder.backing().by() == (room ? Backing.By.SPACER : Backing.By.OWN_STRIP)
                && Math.abs(holder.backing().below() - below) < EPS;
    }

    private static double share(Row row, double from, double to) {
        int all = 400;
        int on = 0;
        for (int i = 0; i < all; i++) {
            on += isOnStrip(row, from + (i + 0.5) * (to - from) / all) ? 1 : 0;
        }
        return (double) on / all;
    }

    boolean hasDoors() {
        return walls.stream()
                .flatMap(wall -> wall.wall().obstacles().stream())
                .anyMatch(any -> any.swing().isPresent());
    }

    private boolean tooNear(HungHolder a, HungHolder b) {
        var one = a.area();
        var two = b.area();
        boolean apart = one.x1() + 20 <= two.x0() + EPS || two.x1() + 20 <= one.x0() + EPS;
        boolean over = one.y0() >= two.y1() + LIFT - EPS || two.y0() >= one.y1() + LIFT - EPS;
        return !apart && !over;
    }

    private static boolean borne(HungHolder holder, CleatedWall wall) {
        var row = wall.rows().get(holder.row() - 1);
        double from = holder.x() + holder.made().back().x0();
        double to = holder.x() + holder.made().back().x1();
        int on = 0;
        int all = 300;
        double step = (to - from) / all;
        boolean ends = true;
        for (int i = 0; i < all; i++) {
            double x = from + (i + 0.5) * step;
            boolean strip = isOnStrip(row, x);
            on += strip ? 1 : 0;
            ends &= strip || x > from + 30 && x < to - 30;
        }
        return ends && on >= all / 2 - 2;
    }

    private static boolean isOnStrip(Row row, double x) {
        return row.strips().stream()
                .anyMatch(
                        strip -> x >= strip.along().from() && x <= strip.along().to());
    }

    private static boolean inside(HungHolder holder, CleatedWall wall) {
        var area = holder.area();
        for (int i = 0; i <= 40; i++) {
            double x = area.x0() + EPS + (area.width() - 2 * EPS) * i / 40;
            if (!inside(wall, x, area.y0() + EPS) || !inside(wall, x, area.y1() + LIFT - EPS)) {
                return false;
            }
        }
        return true;
    }

    /** By the crossings of a ray to the right. */
    private static boolean inside(CleatedWall wall, double x, double y) {
        boolean inside = false;
        var outline = wall.outline();
        for (int i = 0; i < outline.corners().size(); i++) {
            var a = outline.corner(i);
            var b = outline.corner(i + 1);
            if (a.y() > y != b.y() > y && x < a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y())) {
                inside = !inside;
            }
        }
        return inside;
    }

    private static void across(HungHolder holder, CleatedWall wall, List<String> wrong, List<CleatedWall> walls) {
        var lifted = lifted(holder, walls);
        for (var zone : wall.zones()) {
            double depth = zone.kind() == Kind.ELECTRICAL_PANEL ? Math.max(914, zone.depth()) : zone.depth();
            var kept = zone.kept();
            if (depth > 0
                    && box(wall, kept.x0(), kept.x1(), depth, kept.y0(), kept.y1())
                            .meets(lifted)) {
                wrong.add(holder.name() + " meets " + zone.name() + " of another wall");
            }
        }
        for (var strip : wall.strips()) {
            if (box(wall, strip.along().from(), strip.along().to(), 18, strip.top() - 88, strip.top())
                    .meets(lifted)) {
                wrong.add(holder.name() + " meets strip " + strip.label());
            }
        }
    }

    private void across(HungHolder holder, CleatedWall wall, List<String> wrong) {
        across(holder, wall, wrong, walls);
    }

    private Box lifted(HungHolder holder) {
        return lifted(holder, walls);
    }

    private static Box lifted(HungHolder holder, List<CleatedWall> walls) {
        var area = holder.area();
        double depth = -holder.made().box().min().y();
        return box(walls.get(holder.wall() - 1), area.x0(), area.x1(), depth, area.y0(), area.y1() + LIFT);
    }

    private static Box box(CleatedWall wall, double x0, double x1, double depth, double z0, double z1) {
        var a = point(wall, x0, 0, z0);
        var b = point(wall, x1, depth, z1);
        var from = new double[3];
        var to = new double[3];
        for (int i = 0; i < 3; i++) {
            from[i] = Math.min(a[i], b[i]);
            to[i] = Math.max(a[i], b[i]);
        }
        return new Box(from, to);
    }

    /** Along and out from a wall, in the room. */
    private static double[] point(CleatedWall wall, double x, double out, double z) {
        var corner = wall.frame().origin();
        return switch (wall.number()) {
            case 1 -> new double[] {corner.x() + x, corner.y() - out, z};
            case 2 -> new double[] {corner.x() - out, corner.y() - x, z};
            default -> new double[] {corner.x() - x, corner.y() + out, z};
        };
    }

    private void swings(HungHolder holder, CleatedWall wall, List<String> wrong) {
        for (var zone : wall.zones()) {
            wall.wall().obstacles().get(zone.at()).swing().ifPresent(swing -> {
                double height =
                        Math.min(zone.itself().y1() - 0.01, holder.area().y1());
                if (height > holder.area().y0() && sweeps(holder, wall, zone, swing, height)) {
                    wrong.add(holder.name() + " is in the swing of " + zone.name());
                }
            });
        }
    }

    /** The leaf at every degree, its thickness behind it as it opens. */
    private boolean sweeps(HungHolder holder, CleatedWall wall, Zone zone, Swing swing, double height) {
        var box = lifted(holder);
        double hinge =
                swing.hinges() == Side.LEFT ? zone.itself().x0() : zone.itself().x1();
        double sign = swing.hinges() == Side.LEFT ? 1 : -1;
        for (double angle = 0; angle <= swing.angle(); angle += 1) {
            double cos = Math.cos(Math.toRadians(angle));
            double sin = Math.sin(Math.toRadians(angle));
            for (double r = 0; r <= zone.itself().width(); r += 10) {
                for (double thick = 0; thick <= swing.thickness(); thick += swing.thickness() / 2) {
                    double x = hinge + sign * (r * cos + thick * sin);
                    double out = r * sin - thick * cos;
                    if (box.holds(point(wall, x, out, height), EPS)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}
