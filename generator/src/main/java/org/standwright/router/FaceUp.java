package org.standwright.router;

import java.util.EnumSet;
import java.util.Set;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;

/** Which faces of a part a router has to work on. What goes right through and is equal on both faces can be cut from either. */
public final class FaceUp {
    private static final FeatureVisitor<Set<Face>> NEEDED = new FeatureVisitor<>() {
        @Override
        public Set<Face> channel(Channel channel) {
            return EnumSet.of(channel.face());
        }

        @Override
        public Set<Face> hole(Hole hole) {
            return hole.depth().isPresent() || hole.recess().isPresent() ? EnumSet.of(hole.face()) : Set.of();
        }

        @Override
        public Set<Face> pocket(Pocket pocket) {
            return pocket.depth().isPresent() ? EnumSet.of(pocket.face()) : Set.of();
        }

        @Override
        public Set<Face> edgeHole(EdgeHole hole) {
            return Set.of();
        }

        @Override
        public Set<Face> bevel(Bevel bevel) {
            return Set.of();
        }

        @Override
        public Set<Face> contour(Contour contour) {
            return Set.of();
        }
    };

    private FaceUp() {}

    /** The faces that something is cut into, other than right through. */
    public static Set<Face> worked(Part part) {
        var faces = EnumSet.noneOf(Face.class);
        part.features().forEach(feature -> faces.addAll(feature.accept(NEEDED)));
        return faces;
    }

    /** The face that is up first: the one to be seen, unless there is work on the other one only. */
    public static Face of(Part part) {
        return worked(part).equals(EnumSet.of(Face.BENCH)) ? Face.BENCH : Face.SHOW;
    }
}
