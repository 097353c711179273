package org.standwright.design.carcass;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.SideBore;
import org.standwright.design.kit.Side;
import org.standwright.geom.Axis;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Banding;
import org.standwright.part.Bands;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;

/**
 * Sides and partitions, with the dados for all levels that end in them and the holes bored from the openings beside
 * them. A side's bench face looks inwards, a partition's to the right; their x runs up from the lower end.
 */
final class UprightMaker {
    private final Frame frame;
    private final Housing housing;
    private final Optional<Banding> band;
    private final List<Level> levels;

    UprightMaker(Frame frame, Optional<Banding> band, List<Level> levels) {
        this.frame = frame;
        this.housing = new Housing(frame);
        this.band = band;
        this.levels = levels;
    }

    /**
     * Refuses a hole that no upright is there for.
     *
     * @throws IllegalArgumentException when the wall of a hole is no face of a side or partition at its height
     */
    void check(List<SideBore> bores, List<Upright> partitions) {
        for (var bore : bores) {
            if (Stream.concat(Stream.of(left(), right()), partitions.stream())
                    .noneMatch(upright -> isBoredBy(upright, bore))) {
                throw new IllegalArgumentException("no upright is there for " + bore + ".");
            }
        }
    }

    private Upright left() {
        return new Upright("left side", Upright.Kind.LEFT_SIDE, 0, frame.floorToCarcass(), frame.top());
    }

    private Upright right() {
        double x = frame.width() - frame.panel();
        return new Upright("right side", Upright.Kind.RIGHT_SIDE, x, frame.floorToCarcass(), frame.top());
    }

    PlacedPart leftSide(List<SideBore> bores) {
        var part = side(frame.insideDepth(), frame.depth())
                .banded(Bands.atY0(band))
                .with(dados(left()))
                .with(holes(left(), bores));
        var origin = new Vec3(frame.panel(), 0, frame.floorToCarcass());
        return new PlacedPart(left().label(), part, new Placement(Axis.Z_PLUS, Axis.Y_PLUS, origin));
    }

    PlacedPart rightSide(List<SideBore> bores) {
        var part = side(0, frame.back())
                .banded(Bands.atY1(band))
                .with(dados(right()))
                .with(holes(right(), bores));
        var origin = new Vec3(right().x(), frame.sideDepth(), frame.floorToCarcass());
        return new PlacedPart(right().label(), part, new Placement(Axis.Z_PLUS, Axis.Y_MINUS, origin));
    }

    /** A side with its rabbets, if any; the back's lies between these two lines across its width. */
    private Part side(double backFrom, double backTo) {
        double height = frame.height();
        double depth = frame.sideDepth();
        var blank = Part.blank("side", frame.design().carcass().sheet().material(), height, depth);
        return frame.isButted()
                ? blank
                : blank.with(
                        Channel.across(Face.BENCH, 0, frame.panel(), depth, frame.housing()),
                        Channel.across(Face.BENCH, height - frame.panel(), height, depth, frame.housing()),
                        Channel.along(Face.BENCH, backFrom, backTo, height, frame.housing()));
    }

    PlacedPart partition(Upright upright, List<SideBore> bores) {
        double height = upright.z1() + housing.inLevel(upright, upright.z1()) - bottom(upright);
        var part = Part.blank("partition", frame.design().carcass().sheet().material(), height, frame.insideDepth())
                .banded(Bands.atY0(band))
                .with(dados(upright))
                .with(holes(upright, bores));
        var origin = new Vec3(upright.x() + frame.panel(), 0, bottom(upright));
        return new PlacedPart(upright.label(), part, new Placement(Axis.Z_PLUS, Axis.Y_PLUS, origin));
    }

    /** Height of the part's lower end. */
    private double bottom(Upright upright) {
        return upright.kind().isSide() ? upright.z0() : upright.z0() - housing.inLevel(upright, upright.z0());
    }

    private List<Channel> dados(Upright upright) {
        double right = upright.x() + frame.panel();
        return levels.stream()
                .filter(level -> within(level.z(), upright))
                .flatMap(level -> Stream.concat(
                        Grid.same(level.x0(), right) ? Stream.of(dado(upright, Side.LEFT, level)) : Stream.empty(),
                        Grid.same(level.x1(), upright.x())
                                ? Stream.of(dado(upright, Side.RIGHT, level))
                                : Stream.empty()))
                .toList();
    }

    /** Through at the back; at the front it begins where the level does. */
    private Channel dado(Upright upright, Side wall, Level level) {
        double depth = housing.inUpright(wall == Side.LEFT ? level.x0() : level.x1());
        double x = level.z() - bottom(upright);
        return switch (upright.kind()) {
            case LEFT_SIDE -> housing.dado(Face.BENCH, x, level.front(), frame.sideDepth(), depth);
            case RIGHT_SIDE -> housing.dado(Face.BENCH, x, 0, frame.sideDepth() - level.front(), depth);
            case PARTITION, NESTED -> housing.dado(face(upright, wall), x, level.front(), frame.insideDepth(), depth);
        };
    }

    private List<Hole> holes(Upright upright, List<SideBore> bores) {
        return bores.stream()
                .filter(bore -> isBoredBy(upright, bore))
                .map(bore -> Hole.blind(
                        face(upright, bore.wall()),
                        bore.z() - bottom(upright),
                        upright.kind() == Upright.Kind.RIGHT_SIDE ? frame.sideDepth() - bore.y() : bore.y(),
                        bore.diameter(),
                        bore.depth(),
                        bore.purpose()))
                .toList();
    }

    /** Whether a hole goes into this upright: its wall lies in one of the two faces. */
    private boolean isBoredBy(Upright upright, SideBore bore) {
        double face = bore.wall() == Side.LEFT ? upright.x() + frame.panel() : upright.x();
        return Grid.same(bore.x(), face) && within(bore.z(), upright);
    }

    private static boolean within(double z, Upright upright) {
        return !Grid.less(z, upright.z0()) && !Grid.less(upright.z1(), z);
    }

    /** The left wall of an opening is the right face of its upright. */
    private static Face face(Upright upright, Side wall) {
        return !upright.kind().isSide() && wall == Side.RIGHT ? Face.SHOW : Face.BENCH;
    }
}
