package org.standwright.export.mesh;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.io.core.input.StreamGeometryInput;
import org.apache.commons.geometry.io.euclidean.threed.GeometryFormat3D;
import org.apache.commons.geometry.io.euclidean.threed.IO3D;
import org.standwright.solid.AssemblySolids;

/** An STL file, binary or text, by commons-geometry. It knows no parts: they are told apart by how many triangles each has. */
final class ReadStl {
    private ReadStl() {}

    static List<ReadMesh> of(byte[] file, AssemblySolids assembly) {
        var triangles = triangles(file);
        var meshes = new ArrayList<ReadMesh>();
        int from = 0;
        for (var placed : assembly.solids()) {
            int to = from + placed.solid().triangleCount();
            meshes.add(new ReadMesh(placed.label(), triangles.subList(from, to)));
            from = to;
        }
        if (from != triangles.size()) {
            throw new IllegalStateException(triangles.size() + " triangles read, but " + from + " are expected");
        }
        return meshes;
    }

    static List<ReadMesh.Triangle> triangles(byte[] file) {
        var input = new StreamGeometryInput(new ByteArrayInputStream(file));
        try (var facets = IO3D.facets(input, GeometryFormat3D.STL)) {
            return facets.map(facet -> {
                        var corners = facet.getVertices();
                        return new ReadMesh.Triangle(corners.get(0), corners.get(1), corners.get(2));
                    })
                    .toList();
        }
    }
}
