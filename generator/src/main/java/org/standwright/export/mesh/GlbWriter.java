package org.standwright.export.mesh;

import java.io.IOException;
import java.io.OutputStream;
import org.standwright.solid.AssemblySolids;

/**
 * GLB (glTF 2.0 in one file): a node for each thing that moves, in it a node for each part under its label, and one mesh
 * for all parts of one workpiece. In metres with y up: (x, y, z) mm becomes (x, z, -y) / 1000. There are no normals, which
 * tells readers to shade every triangle flat, so that edges look sharp.
 */
public final class GlbWriter {
    private GlbWriter() {}

    public static void write(AssemblySolids assembly, OutputStream out) throws IOException {
        var bodies = Body.of(assembly);
        var meshes = new GlbMeshes(bodies);
        var scene = new GlbScene(assembly, bodies, meshes);
        new GlbChunks(scene.json(), meshes.bytes()).write(out);
    }
}
