package org.standwright.design.top;

import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** The finished carcass as the worktop and the back meet it: the sub-top, and what stands against it from below. */
final class UnderTop {
    private final List<PlacedPart> parts;

    UnderTop(Group carcass) {
        this.parts = carcass.parts();
    }

    /** The box around the sub-top. */
    Box3 subTop() {
        return around("sub-top");
    }

    /** The box around the back. */
    Box3 back() {
        return around("back");
    }

    /** Where two pieces of the back meet, with the wood beside their edges, seen from the front. */
    Optional<Taken> backJoint() {
        var pieces = parts.stream()
                .filter(part -> part.part().name().equals("back"))
                .map(part -> Seen.FROM_FRONT.of(part.box()))
                .toList();
        if (pieces.size() < 2) {
            return Optional.empty();
        }
        var left = pieces.get(0);
        double edge = Surroundings.EDGE;
        var beside = new Rect(left.x1() - edge, left.y0(), left.x1() + edge, left.y1());
        return Optional.of(new Taken("the joint of the back", beside));
    }

    /** Sides, partitions, the back and whatever else reaches the sub-top, seen from above. */
    List<Taken> uprights() {
        double underside = subTop().min().z();
        return parts.stream()
                .filter(part -> !part.part().name().equals("sub-top"))
                .filter(part -> Grid.less(part.box().min().z(), underside)
                        && !Grid.less(part.box().max().z(), underside))
                .map(part -> new Taken("the " + part.label(), Seen.FROM_ABOVE.of(part.box())))
                .toList();
    }

    /** Panels that stand or lie against the back from within, seen from the front. */
    List<Taken> againstBack() {
        double face = back().min().y();
        return parts.stream()
                .filter(part -> !part.part().name().equals("back"))
                .filter(part -> Grid.less(part.box().min().y(), face)
                        && !Grid.less(part.box().max().y(), face))
                .map(part -> new Taken("the " + part.label(), Seen.FROM_FRONT.of(part.box())))
                .toList();
    }

    private Box3 around(String name) {
        return Box3.around(parts.stream()
                .filter(part -> part.part().name().equals(name))
                .map(PlacedPart::box)
                .toList());
    }
}
