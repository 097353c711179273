package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.standwright.solid.exact.ExactSolid.Face;

/** One try to make an exact solid of a labelled mesh: the solid, or the regions that stand in the way. */
final class Attempt {
    private final Model model;
    private final Set<Integer> offenders = new HashSet<>();
    private Optional<ExactSolid> solid = Optional.empty();

    Attempt(Model model) {
        this.model = model;
        var seams = new Seams(model);
        offenders.addAll(seams.without());
        if (!offenders.isEmpty()) {
            return;
        }
        var borders = new Borders(model.sides(), model.regions(), seams.sides());
        var corners = new Corners(model, borders, seams);
        offenders.addAll(corners.offenders());
        if (!offenders.isEmpty()) {
            return;
        }
        var edges = new Edges(model, corners);
        var making = new FaceMaking(model, borders, seams, corners, edges);
        var faces = new ArrayList<Face>();
        for (int region = 0; region < model.regions().count(); region++) {
            faces.add(making.face(region));
        }
        offenders.addAll(edges.offenders());
        if (edges.failed()) {
            return;
        }
        var clashes = new Clashes(corners.places(), edges.all());
        faces.forEach(face -> clashes.find(face, (one, other) -> {
            var regions = new HashSet<>(edges.regions(one));
            regions.addAll(edges.regions(other));
            offenders.addAll(Offenders.of(model, regions));
        }));
        if (offenders.isEmpty()) {
            solid = Optional.of(new ExactSolid(corners.places(), edges.all(), shells(faces), facets()));
        }
    }

    private int facets() {
        int facets = 0;
        for (int region = 0; region < model.regions().count(); region++) {
            facets += model.surface(region).isEmpty() ? 1 : 0;
        }
        return facets;
    }

    /** Faces that hang together, in the order of their first. */
    private List<List<Face>> shells(List<Face> faces) {
        var first = new int[faces.size()];
        for (int i = 0; i < first.length; i++) {
            first[i] = i;
        }
        for (int side = 0; side < model.sides().count(); side++) {
            int one = root(first, model.regions().left(side));
            int other = root(first, model.regions().right(side));
            first[Math.max(one, other)] = Math.min(one, other);
        }
        var shells = new TreeMap<Integer, List<Face>>();
        for (int i = 0; i < first.length; i++) {
            shells.computeIfAbsent(root(first, i), root -> new ArrayList<>()).add(faces.get(i));
        }
        return List.copyOf(shells.values());
    }

    private static int root(int[] first, int region) {
        int root = region;
        while (first[root] != root) {
            root = first[root];
        }
        return root;
    }

    Optional<ExactSolid> solid() {
        return solid;
    }

    Set<Integer> offenders() {
        return offenders;
    }
}
