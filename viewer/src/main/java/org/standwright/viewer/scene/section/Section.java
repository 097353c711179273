package org.standwright.viewer.scene.section;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import org.standwright.assembly.Pose;
import org.standwright.solid.PlacedSolid;
import org.standwright.solid.Solid;

/**
 * What is kept of solids where they stand in a pose, in their order; those beyond the plane are left out.
 *
 * <p>A solid that only touches the plane is kept whole or left out whole. Any other is cut half a unit of the grid before
 * it (1/2048 mm), where it has no corner.
 */
public record Section(SectionPlane plane, List<Piece> pieces) {
    public Section {
        pieces = List.copyOf(pieces);
    }

    public static Section of(List<PlacedSolid> solids, Pose pose, SectionPlane plane) {
        var known = new HashMap<Job, SolidCut>();
        var pieces = new ArrayList<Piece>();
        for (var placed : solids) {
            var job = new Job(placed.solid(), PartPlane.of(plane, placed.placement(pose)));
            var cut = known.computeIfAbsent(job, Job::done);
            cut.of(placed).ifPresent(pieces::add);
        }
        return new Section(plane, pieces);
    }

    private record Job(Solid solid, PartPlane plane) {
        SolidCut done() {
            return SolidCut.of(solid, plane);
        }
    }
}
