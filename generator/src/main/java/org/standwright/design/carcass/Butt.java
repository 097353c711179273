package org.standwright.design.carcass;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Hole;
import org.standwright.part.Removed;

/**
 * One panel's end against another's face. The depth of the carcass runs along y of either panel.
 *
 * @param ending the panel that ends there
 * @param met the panel whose face is met
 * @param into from that face into the panel that ends there
 * @param front where the centre line of that panel meets the face, at the carcass's front edge
 */
record Butt(PlacedPart ending, PlacedPart met, Axis into, Vec3 front) {
    /** Wood between two bores along the depth, mm; common practice, no source. */
    private static final double BETWEEN = 3;
    /** Wood that a bore passing beside another at least leaves, mm. */
    private static final double ASIDE = 0.5;
    /** Wood between the ends of two bores from both ends of a panel, mm (shop practice: web at least 6 mm). */
    private static final double BETWEEN_ENDS = JointFit.LEAST_WEB;

    /** What a fastener this far behind the front edge takes out of the panel that is met. */
    List<Hole> inMet(Fastening fastening, double y) {
        var at = met.placement().local(front.plus(new Vec3(0, y, 0)));
        var outer = met.placement().through() == into ? Face.BENCH : Face.SHOW;
        return fastening.inFace(outer, at.x(), at.y());
    }

    /** What it takes out of the panel that ends there. */
    EdgeHole inEnding(Fastening fastening, double y) {
        var at = ending.placement().local(front.plus(new Vec3(0, y, 0)));
        return fastening.inEnd(ending.placement().along() == into ? Edge.X0 : Edge.X1, at.y());
    }

    /** Whether the panel that ends there has room for such bores from both its ends. */
    boolean takes(Fastening fastening) {
        double both = 2 * fastening.inEnd(Edge.X0, 0).depth() + BETWEEN_ENDS;
        return !Grid.less(ending.part().length(), both);
    }

    /** Whether a fastener there meets nothing that either panel is bored or cut for. */
    boolean isFree(Fastening fastening, double y) {
        return isFree(ending, List.of(inEnding(fastening, y))) && isFree(met, inMet(fastening, y));
    }

    private static boolean isFree(PlacedPart panel, List<? extends Feature> bores) {
        var removed = new Removed(panel.part());
        var room = bores.stream().map(bore -> grown(bore.accept(removed))).toList();
        return panel.part().features().stream()
                .map(feature -> feature.accept(removed))
                .flatMap(other -> room.stream().map(box -> box.overlap(other)))
                .noneMatch(overlap -> overlap > Grid.STEP);
    }

    private static Box3 grown(Box3 bore) {
        var room = new Vec3(ASIDE, BETWEEN, ASIDE);
        return new Box3(bore.min().minus(room), bore.max().plus(room));
    }

    /** Both panels bored for fasteners at these places behind the front edge. */
    Stream<PlacedPart> bored(Fastening fastening, List<Double> places) {
        var ends = places.stream().map(y -> inEnding(fastening, y)).toList();
        var faces = places.stream().flatMap(y -> inMet(fastening, y).stream()).toList();
        return Stream.of(bored(ending, ends), bored(met, faces));
    }

    private static PlacedPart bored(PlacedPart panel, List<? extends Feature> bores) {
        return new PlacedPart(panel.label(), panel.part().with(bores), panel.placement());
    }
}
