package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;

/**
 * A cabinet by a rule: 60 parts with 488 features, no two of one shape. Nothing that is bored into an edge meets
 * anything else.
 */
public final class SampleCabinet {
    private static final Material BOX = new Material("drawer plywood", 12, 680, Grain.ALONG_LENGTH);
    private static final Material THIN = new Material("thin plywood", 6, 680, Grain.ALONG_LENGTH);

    /** Every size of a part grows by this from one to the next, mm, so that no two are equal. */
    private final double growth;

    private SampleCabinet(int number) {
        growth = 0.25 * number;
    }

    /** The parts of cabinet {@code number}; no two cabinets share one. */
    public static List<Part> parts(int number) {
        var cabinet = new SampleCabinet(number);
        return Stream.of(
                        IntStream.range(0, 8).mapToObj(cabinet::side),
                        IntStream.range(0, 16).mapToObj(cabinet::drawerSide),
                        IntStream.range(0, 8).mapToObj(cabinet::drawerEnd),
                        IntStream.range(0, 12).mapToObj(cabinet::front),
                        IntStream.range(0, 12).mapToObj(cabinet::level),
                        IntStream.range(0, 4).mapToObj(cabinet::back))
                .flatMap(parts -> parts)
                .toList();
    }

    /** This many different parts, of as many cabinets as it takes, each where it lies on a pile. */
    public static Assembly pile(int count) {
        var parts = Stream.iterate(0, number -> number + 1)
                .flatMap(number -> parts(number).stream())
                .limit(count)
                .toList();
        var placed = IntStream.range(0, count)
                .mapToObj(i -> new PlacedPart(
                        parts.get(i).name() + " " + i,
                        parts.get(i),
                        new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(0, 0, 20.0 * i))))
                .toList();
        return new Assembly("pile", List.of(Group.fixed("parts", placed, List.of())), List.of());
    }

    /** Three dados, and pin holes in two rows between them: 21 features. */
    private Part side(int i) {
        double width = 560 + growth;
        var features = new ArrayList<Feature>();
        for (double x : new double[] {0, 250 + 10 * i, 700}) {
            features.add(Channel.across(Face.SHOW, x, x + 18.2, width, 6));
        }
        for (int k = 0; k < 9; k++) {
            features.add(Hole.blind(Face.SHOW, 380 + 32 * k, 37, 5, 12, "shelf pin"));
            features.add(Hole.blind(Face.SHOW, 380 + 32 * k, width - 37, 5, 12, "shelf pin"));
        }
        return Part.blank("side", SampleParts.PLYWOOD, 720 + growth, width).with(features);
    }

    /** A groove through two rabbets, three holes for the slide and two pilots in the lower edge: 8 features. */
    private Part drawerSide(int i) {
        double length = 500 + growth;
        double width = 90 + 8 * i;
        return Part.blank("drawer side", BOX, length, width)
                .with(
                        Channel.across(Face.SHOW, 0, 12, width, 6),
                        Channel.across(Face.SHOW, length - 12, length, width, 6),
                        Channel.along(Face.SHOW, 10, 16.35, length, 6),
                        Hole.through(37, width / 2, 4, "slide"),
                        Hole.through(165, width / 2, 4, "slide"),
                        Hole.through(357, width / 2, 4, "slide"),
                        new EdgeHole(Edge.Y1, 60, 6, 2.5, 25, "pilot"),
                        new EdgeHole(Edge.Y1, length - 60, 6, 2.5, 25, "pilot"));
    }

    /** A groove, and two pilots in its ends: 3 features. */
    private Part drawerEnd(int i) {
        double length = 400 + growth;
        double width = 90 + 8 * i;
        return Part.blank("drawer end", BOX, length, width)
                .with(
                        Channel.along(Face.SHOW, 10, 16.35, length, 6),
                        new EdgeHole(Edge.X0, width - 30, 6, 2.5, 30, "pilot"),
                        new EdgeHole(Edge.X1, width - 30, 6, 2.5, 30, "pilot"));
    }

    /** Two holes for the pull and two for the screws of the box: 4 features. */
    private Part front(int i) {
        double length = 430 + growth;
        double width = 110 + 9 * i;
        return Part.blank("front", SampleParts.PLYWOOD, length, width)
                .with(
                        Hole.through(length / 2 - 64, width / 2, 5, "pull"),
                        Hole.through(length / 2 + 64, width / 2, 5, "pull"),
                        Hole.blind(Face.BENCH, 40, 50, 2.5, 12, "screw"),
                        Hole.blind(Face.BENCH, length - 40, 50, 2.5, 12, "screw"));
    }

    /** A groove for the back, and four pilots in each end: 9 features. */
    private Part level(int i) {
        double length = 420 + 12 * i + growth;
        var features = new ArrayList<Feature>(List.of(Channel.along(Face.SHOW, 535, 541.2, length, 6)));
        for (int k = 0; k < 4; k++) {
            features.add(new EdgeHole(Edge.X0, 50 + 140 * k, 9, 2.5, 40, "pilot"));
            features.add(new EdgeHole(Edge.X1, 50 + 140 * k, 9, 2.5, 40, "pilot"));
        }
        return Part.blank("level", SampleParts.PLYWOOD, length, 556).with(features);
    }

    /** Two cutouts and a hole for a cord: 3 features. */
    private Part back(int i) {
        return Part.blank("back", THIN, 700 + growth, 430 + 15 * i)
                .with(
                        Pocket.through(new Rect(100, 100, 220, 180), 12, "outlet"),
                        Pocket.through(new Rect(450, 120, 550, 220), 50, "dust port"),
                        Hole.through(350, 60, 60, "cord"));
    }
}
