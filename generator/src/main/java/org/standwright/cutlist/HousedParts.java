package org.standwright.cutlist;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Run;

/** The parts of an assembly whose thickness lies in a dado, groove or rabbet of another: found where they reach in. */
final class HousedParts {
    /** What a part reaches into a channel at least, mm: more than rounding, less than any housing. */
    private static final double REACH = 0.5;

    private HousedParts() {}

    /** Their labels. */
    static Set<String> of(List<PlacedPart> parts) {
        var housed = new TreeSet<String>();
        for (var owner : parts) {
            for (var feature : owner.part().features()) {
                if (feature instanceof Channel channel) {
                    parts.stream()
                            .filter(part -> part != owner && sitsIn(channel, owner, part))
                            .map(PlacedPart::label)
                            .forEach(housed::add);
                }
            }
        }
        return housed;
    }

    private static boolean sitsIn(Channel channel, PlacedPart owner, PlacedPart part) {
        var across = channel.run() == Run.ALONG
                ? owner.placement().across()
                : owner.placement().along();
        return isAlong(part.placement().through(), across)
                && room(channel, owner).overlap(part.box()) > REACH;
    }

    private static boolean isAlong(Axis a, Axis b) {
        return a == b || a == b.opposite();
    }

    /** What the channel takes out, in assembly coordinates. */
    private static Box3 room(Channel channel, PlacedPart owner) {
        double thickness = owner.part().thickness();
        double z0 = channel.face() == Face.BENCH ? 0 : thickness - channel.depth();
        var area = channel.area();
        var place = owner.placement();
        return Box3.between(
                place.apply(new Vec3(area.x0(), area.y0(), z0)),
                place.apply(new Vec3(area.x1(), area.y1(), z0 + channel.depth())));
    }
}
