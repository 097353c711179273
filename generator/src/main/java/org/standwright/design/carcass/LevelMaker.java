package org.standwright.design.carcass;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Axis;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Banding;
import org.standwright.part.Bands;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;

/** Bottom, sub-top, dividers and fixed shelves, with the dados for all partitions that end in them. */
final class LevelMaker {
    private final Frame frame;
    private final Housing housing;
    private final Optional<Banding> band;
    private final List<Upright> partitions;

    LevelMaker(Frame frame, Optional<Banding> band, List<Upright> partitions) {
        this.frame = frame;
        this.housing = new Housing(frame);
        this.band = band;
        this.partitions = partitions.stream()
                .sorted(Comparator.comparingDouble(Upright::x))
                .toList();
    }

    /** Its show face, with the partitions' dados, is the one inside the carcass. */
    PlacedPart bottom(List<Hole> holes) {
        var level = outer("bottom", frame.floorToCarcass());
        var part = blank(level)
                .banded(Bands.atY0(band))
                .with(dados(level, frame.openingBottom(), Face.SHOW))
                .with(holes.stream()
                        .map(hole -> Hole.through(hole.x() - left(level), hole.y(), hole.diameter(), hole.purpose()))
                        .toList());
        return placed(level, part);
    }

    /** Its show face, with the partitions' dados, is the one inside the carcass. */
    PlacedPart subTop(List<Hole> holes) {
        double depth = frame.insideDepth();
        var level = outer("sub-top", frame.openingTop());
        var part = blank(level)
                .banded(Bands.atY1(band))
                .with(dados(level, frame.openingTop(), Face.SHOW))
                .with(holes.stream()
                        .map(hole ->
                                Hole.through(hole.x() - left(level), depth - hole.y(), hole.diameter(), hole.purpose()))
                        .toList());
        var origin = new Vec3(left(level), depth, frame.top());
        return new PlacedPart("sub-top", part, new Placement(Axis.X_PLUS, Axis.Y_MINUS, origin));
    }

    /** A divider or a fixed shelf: show face up. */
    PlacedPart inner(Level level) {
        var part = blank(level)
                .banded(Bands.atY0(band))
                .with(dados(level, level.z() + frame.panel(), Face.SHOW))
                .with(dados(level, level.z(), Face.BENCH));
        return placed(level, part);
    }

    private Level outer(String name, double z) {
        return new Level(name, name, frame.panel(), frame.width() - frame.panel(), 0, z);
    }

    private Part blank(Level level) {
        double length = level.x1() + housing.of(level, level.x1()) - left(level);
        return Part.blank(
                level.name(), frame.design().carcass().sheet().material(), length, frame.insideDepth() - level.front());
    }

    private PlacedPart placed(Level level, Part part) {
        var origin = new Vec3(left(level), level.front(), level.z());
        return new PlacedPart(level.label(), part, new Placement(Axis.X_PLUS, Axis.Y_PLUS, origin));
    }

    /** Left end of the part. */
    private double left(Level level) {
        return level.x0() - housing.of(level, level.x0());
    }

    /** Dados for the partitions that end at the level's face at this height. */
    private List<Channel> dados(Level level, double z, Face face) {
        var dados = new ArrayList<Channel>();
        for (var partition : partitions) {
            boolean ends = Grid.same(partition.z0(), z) || Grid.same(partition.z1(), z);
            double depth = housing.inLevel(partition, z);
            if (ends && depth > 0 && Grid.less(level.x0(), partition.x()) && Grid.less(partition.x(), level.x1())) {
                double x = partition.x() - left(level);
                dados.add(housing.dado(face, x, 0, frame.insideDepth(), depth));
            }
        }
        return dados;
    }
}
