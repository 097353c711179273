package org.standwright.design.carcass;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standwright.assembly.Group;
import org.standwright.assembly.Hardware;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Part;

/**
 * The joints of a butted carcass: bottom and sub-top between the sides, the partitions between bays between those two. A
 * housed carcass has none.
 *
 * <p>Heads under the bottom and on the sub-top are covered later: those joints are made before the support and the
 * worktop are set.
 */
public final class ButtJoints {
    /** Fewer do not keep a panel from turning. */
    private static final int LEAST = 2;

    private final Frame frame;
    private final Optional<Fastening> fastening;

    /**
     * @throws ImpossibleDesignException when the fastener does not suit the carcass's sheet
     */
    public ButtJoints(Frame frame) {
        this.frame = frame;
        this.fastening = Fastening.of(frame.design());
    }

    /**
     * The same groups, the carcass bored for its joints wherever nothing else is bored or cut already.
     *
     * @param groups finished but for the joints, with one named 'carcass'
     * @throws ImpossibleDesignException when a joint has no room for its fasteners
     */
    public List<Group> bored(List<Group> groups) {
        return fastening
                .map(chosen -> groups.stream()
                        .map(group -> group.name().equals("carcass")
                                ? new Group(group.name(), group.travel(), bored(chosen, group.parts()), group.blocks())
                                : group)
                        .toList())
                .orElse(groups);
    }

    /** The fasteners of all joints, counted by their holes. */
    public List<Hardware> hardware(List<Part> parts) {
        return fastening.stream()
                .map(chosen -> chosen.hardware(count(chosen, parts)))
                .toList();
    }

    /** What the stand's glue is for. */
    public String glued() {
        return fastening.map(Fastening::glued).orElse("all housings, boxes and layers");
    }

    private static int count(Fastening fastening, List<Part> parts) {
        var purpose = fastening.inEnd(Edge.X0, 0).purpose();
        return (int) parts.stream()
                .flatMap(part -> part.features().stream())
                .filter(feature ->
                        feature instanceof EdgeHole hole && hole.purpose().equals(purpose))
                .count();
    }

    private List<PlacedPart> bored(Fastening chosen, List<PlacedPart> parts) {
        var byLabel = new LinkedHashMap<String, PlacedPart>();
        parts.forEach(part -> byLabel.put(part.label(), part));
        double half = frame.panel() / 2;
        for (var level : List.of("bottom", "sub-top")) {
            double z = level.equals("bottom") ? frame.floorToCarcass() + half : frame.openingTop() + half;
            bore(chosen, byLabel, level, "left side", Axis.X_PLUS, new Vec3(frame.panel(), 0, z));
            bore(chosen, byLabel, level, "right side", Axis.X_MINUS, new Vec3(frame.width() - frame.panel(), 0, z));
        }
        var lefts = frame.partitions();
        for (int i = 0; i < lefts.size(); i++) {
            double x = lefts.get(i) + half;
            var label = Panels.label(frame, i);
            bore(chosen, byLabel, label, "bottom", Axis.Z_PLUS, new Vec3(x, 0, frame.openingBottom()));
            bore(chosen, byLabel, label, "sub-top", Axis.Z_MINUS, new Vec3(x, 0, frame.openingTop()));
        }
        return new ArrayList<>(byLabel.values());
    }

    private void bore(
            Fastening chosen, Map<String, PlacedPart> parts, String ending, String met, Axis into, Vec3 front) {
        var butt = new Butt(parts.get(ending), parts.get(met), into, front);
        var places = new ButtPlaces(butt, chosen, frame.insideDepth()).places();
        if (!butt.takes(chosen) || places.size() < LEAST) {
            throw noRoom(chosen, ending, met);
        }
        butt.bored(chosen, places).forEach(part -> parts.put(part.label(), part));
    }

    private ImpossibleDesignException noRoom(Fastening chosen, String ending, String met) {
        return Fastening.refusal(
                frame.design(),
                "Where the " + ending + " meets the " + met + " there is no room for " + LEAST + " of " + chosen.name()
                        + " between all else that is bored and cut there.",
                List.of());
    }
}
