package org.standwright.design.carcass;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.built.BayLayout;
import org.standwright.design.drawer.SlidePilots;
import org.standwright.design.frame.Frame;
import org.standwright.design.top.TopScrews;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;

/**
 * Sides, bottom, sub-top, partitions and back, housed in dados and rabbets. Bottom and sub-top lie in rabbets at the
 * ends of the sides, the back in rabbets along their rear edges and over the rear edges of the rest.
 */
public final class CarcassMaker {
    private final Frame frame;
    private final Material wood;
    private final SlidePilots pilots;
    private final TopScrews topScrews;

    public CarcassMaker(Frame frame, List<BayLayout> bays) {
        this.frame = frame;
        this.wood = frame.design().carcass().sheet().material();
        this.pilots = new SlidePilots(frame, bays);
        this.topScrews = new TopScrews(frame);
    }

    public Group carcass(List<Hole> bottomHoles, List<Block> slides) {
        var parts = new ArrayList<PlacedPart>();
        parts.add(leftSide());
        parts.add(rightSide());
        parts.add(bottom(bottomHoles));
        parts.add(subTop());
        for (int i = 0; i < frame.partitions().size(); i++) {
            parts.add(partition(i));
        }
        parts.add(back());
        return Group.fixed("carcass", parts, slides);
    }

    /** Length of bottom, sub-top and a level back: the openings, the partitions, and a housing at each end. */
    private double housedWidth() {
        return frame.width() - 2 * frame.panel() + 2 * frame.housing();
    }

    /** Left edge of whatever is housed in the left side. */
    private double housedLeft() {
        return frame.panel() - frame.housing();
    }

    private PlacedPart leftSide() {
        var part = side(frame.depth() - frame.back(), frame.depth()).with(pilots.rightFaceOfLeftSide());
        return new PlacedPart(
                "left side",
                part,
                new Placement(Axis.Z_PLUS, Axis.Y_PLUS, new Vec3(frame.panel(), 0, frame.floorToCarcass())));
    }

    private PlacedPart rightSide() {
        var part = side(0, frame.back()).with(pilots.leftFaceOfRightSide());
        return new PlacedPart(
                "right side",
                part,
                new Placement(
                        Axis.Z_PLUS,
                        Axis.Y_MINUS,
                        new Vec3(frame.width() - frame.panel(), frame.depth(), frame.floorToCarcass())));
    }

    /** A side with its rabbets; the back's lies between these two lines across its width. */
    private Part side(double backFrom, double backTo) {
        double height = frame.height();
        double depth = frame.depth();
        return Part.blank("side", wood, height, depth)
                .with(
                        Channel.across(Face.BENCH, 0, frame.panel(), depth, frame.housing()),
                        Channel.across(Face.BENCH, height - frame.panel(), height, depth, frame.housing()),
                        Channel.along(Face.BENCH, backFrom, backTo, height, frame.housing()));
    }

    private PlacedPart bottom(List<Hole> holes) {
        var part = level("bottom")
                .with(holes.stream()
                        .map(hole -> Hole.through(hole.x() - housedLeft(), hole.y(), hole.diameter(), hole.purpose()))
                        .toList());
        return new PlacedPart(
                "bottom",
                part,
                new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(housedLeft(), 0, frame.floorToCarcass())));
    }

    private PlacedPart subTop() {
        double depth = frame.insideDepth();
        var part = level("sub-top")
                .with(topScrews.places().stream()
                        .map(hole -> Hole.through(
                                hole.x() - housedLeft(), depth - hole.y(), hole.diameter(), hole.purpose()))
                        .toList());
        return new PlacedPart(
                "sub-top", part, new Placement(Axis.X_PLUS, Axis.Y_MINUS, new Vec3(housedLeft(), depth, frame.top())));
    }

    /** Bottom or sub-top: its show face, with the partitions' dados, is the one inside the carcass. */
    private Part level(String name) {
        double depth = frame.insideDepth();
        double fit = frame.design().carcass().fit();
        return Part.blank(name, wood, housedWidth(), depth)
                .with(frame.partitions().stream()
                        .map(left -> left - housedLeft())
                        .map(x -> Channel.across(
                                Face.SHOW, x - fit / 2, x + frame.panel() + fit / 2, depth, frame.housing()))
                        .toList());
    }

    private PlacedPart partition(int index) {
        double height = frame.openingTop() - frame.openingBottom() + 2 * frame.housing();
        var part = Part.blank("partition", wood, height, frame.insideDepth()).with(pilots.partition(index));
        var origin =
                new Vec3(frame.partitions().get(index) + frame.panel(), 0, frame.openingBottom() - frame.housing());
        var label = frame.partitions().size() == 1 ? "partition" : "partition " + (index + 1);
        return new PlacedPart(label, part, new Placement(Axis.Z_PLUS, Axis.Y_PLUS, origin));
    }

    /** Grain along its longer side. */
    private PlacedPart back() {
        var material = frame.design().carcass().back().material();
        double width = housedWidth();
        double y = frame.insideDepth();
        if (frame.height() >= width) {
            return new PlacedPart(
                    "back",
                    Part.blank("back", material, frame.height(), width),
                    new Placement(Axis.Z_PLUS, Axis.X_PLUS, new Vec3(housedLeft(), y, frame.floorToCarcass())));
        }
        return new PlacedPart(
                "back",
                Part.blank("back", material, width, frame.height()),
                new Placement(Axis.X_MINUS, Axis.Z_PLUS, new Vec3(housedLeft() + width, y, frame.floorToCarcass())));
    }
}
