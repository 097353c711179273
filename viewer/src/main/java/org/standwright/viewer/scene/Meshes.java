package org.standwright.viewer.scene;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import javafx.scene.shape.Mesh;
import org.standwright.solid.Solid;

/** What is drawn of each solid, made once; solids are told apart by who they are, which is quick. */
final class Meshes {
    private final Map<Solid, Drawn> drawn = new HashMap<>();

    /** Faces, and edges to be drawn as lines. */
    record Drawn(Mesh faces, Mesh lines) {}

    Drawn of(Solid solid) {
        return drawn.computeIfAbsent(
                solid, known -> new Drawn(MeshConverter.mesh(known), EdgeMesh.lines(known, Creases.of(known))));
    }

    /** Forgets all others. */
    void retain(Set<Solid> solids) {
        drawn.keySet().retainAll(solids);
    }
}
