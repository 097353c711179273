package org.standwright.viewer.scene;

import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import javafx.scene.shape.Mesh;
import org.standwright.assembly.Pose;
import org.standwright.viewer.scene.section.Section;
import org.standwright.viewer.scene.section.SectionPlane;
import org.standwright.viewer.scene.surface.Surface;
import org.standwright.viewer.scene.surface.SurfaceMesh;

/**
 * A section with all that is drawn of it, so that the screen's thread has nothing left to work out.
 *
 * @param whole labels of boards that are kept as they are
 * @param cut boards that the plane goes through; those in neither are cut away
 */
record Cuts(SectionPlane plane, Set<String> whole, Map<String, Cut> cut) {
    /** What is left of a board, and its cut face. */
    record Cut(Meshes.Drawn rest, Mesh cap) {}

    static Cuts of(Scenery scenery, Pose pose, SectionPlane plane) {
        var whole = new HashSet<String>();
        var cut = new HashMap<String, Cut>();
        var drawn = new IdentityHashMap<Surface, Cut>();
        var solids = scenery.boards().stream().map(Scenery.Board::placed).toList();
        for (var piece : Section.of(solids, pose, plane).pieces()) {
            if (piece instanceof org.standwright.viewer.scene.section.Piece.Cut part) {
                cut.put(
                        part.placed().label(),
                        drawn.computeIfAbsent(part.rest(), rest -> new Cut(drawn(rest), SurfaceMesh.flat(part.cap()))));
            } else {
                whole.add(piece.placed().label());
            }
        }
        return new Cuts(plane, whole, cut);
    }

    private static Meshes.Drawn drawn(Surface rest) {
        return new Meshes.Drawn(SurfaceMesh.flat(rest), EdgeMesh.lines(rest, Creases.of(rest)));
    }
}
