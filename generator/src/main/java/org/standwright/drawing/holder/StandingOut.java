package org.standwright.drawing.holder;

import java.util.List;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.HolderVisitor;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.figure.Scale;
import org.standwright.geom.Rect;

/** Bought things that stand out from a back, seen from its right side: dowels, and how far hooks reach. */
record StandingOut(EqualHolders holder, List<Bored> bored, Scale scale) implements HolderVisitor<List<Shape>> {
    @Override
    public List<Shape> pegs(Holder.Pegs pegs) {
        double radius = pegs.dowel().diameter() / 2;
        return bored.stream()
                .filter(hole -> hole.what().equals("pegs"))
                .limit(1)
                .<Shape>map(hole -> {
                    double out = pegs.dowel().length() - hole.depth();
                    double z = hole.at().z();
                    return Polygon.of(
                            scale.paper(new Rect(face() - out, z - radius, face(), z + radius)), Pen.THIN, Fill.NONE);
                })
                .toList();
    }

    @Override
    public List<Shape> hooks(Holder.Hooks hooks) {
        return bored.stream()
                .filter(hole -> hole.what().equals("hooks"))
                .limit(1)
                .<Shape>map(hole -> {
                    double z = scale.paper(hole.at().z());
                    return Line.between(scale.paper(face() - hooks.reach()), z, scale.paper(face()), z, Pen.CENTRE);
                })
                .toList();
    }

    private double face() {
        return holder.back().box().min().y();
    }

    @Override
    public List<Shape> shelf(Holder.Shelf shelf) {
        return List.of();
    }

    @Override
    public List<Shape> bin(Holder.Bin bin) {
        return List.of();
    }

    @Override
    public List<Shape> tray(Holder.Tray tray) {
        return List.of();
    }

    @Override
    public List<Shape> slots(Holder.Slots slots) {
        return List.of();
    }

    @Override
    public List<Shape> bores(Holder.Bores bores) {
        return List.of();
    }

    @Override
    public List<Shape> clampBar(Holder.ClampBar bar) {
        return List.of();
    }

    @Override
    public List<Shape> panel(Holder.Panel panel) {
        return List.of();
    }

    @Override
    public List<Shape> cabinet(Holder.Cabinet cabinet) {
        return List.of();
    }
}
