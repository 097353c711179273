package org.standwright.export.mesh;

import de.javagl.jgltf.model.AccessorByteData;
import de.javagl.jgltf.model.AccessorDatas;
import de.javagl.jgltf.model.AccessorIntData;
import de.javagl.jgltf.model.AccessorShortData;
import de.javagl.jgltf.model.GltfModel;
import de.javagl.jgltf.model.MeshModel;
import de.javagl.jgltf.model.NodeModel;
import de.javagl.jgltf.model.io.GltfModelReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** A GLB file by jgltf, its nodes put where they belong and turned back to mm with z up. */
final class ReadGlb {
    private ReadGlb() {}

    static GltfModel model(byte[] file) throws IOException {
        var reader = new GltfModelReader();
        reader.setJsonErrorConsumer(error -> {
            throw new IllegalStateException(error.toString());
        });
        return reader.readWithoutReferences(new ByteArrayInputStream(file));
    }

    /** One for each node that has a mesh. */
    static List<ReadMesh> of(byte[] file) throws IOException {
        var meshes = new ArrayList<ReadMesh>();
        for (var node : model(file).getNodeModels()) {
            for (var mesh : node.getMeshModels()) {
                meshes.add(new ReadMesh(node.getName(), triangles(node, mesh)));
            }
        }
        return meshes;
    }

    private static List<ReadMesh.Triangle> triangles(NodeModel node, MeshModel mesh) {
        var primitive = mesh.getMeshPrimitiveModels().get(0);
        var positions = AccessorDatas.createFloat(primitive.getAttributes().get("POSITION"));
        var matrix = node.computeGlobalTransform(null);
        var points = new ArrayList<Vector3D>();
        for (int i = 0; i < positions.getNumElements(); i++) {
            points.add(placed(matrix, positions.get(i, 0), positions.get(i, 1), positions.get(i, 2)));
        }
        var index = index(primitive.getIndices().getAccessorData());
        var triangles = new ArrayList<ReadMesh.Triangle>();
        for (int i = 0; i < primitive.getIndices().getCount(); i += 3) {
            triangles.add(new ReadMesh.Triangle(
                    points.get(index.applyAsInt(i)),
                    points.get(index.applyAsInt(i + 1)),
                    points.get(index.applyAsInt(i + 2))));
        }
        return triangles;
    }

    private static IntUnaryOperator index(Object data) {
        if (data instanceof AccessorShortData shorts) {
            return shorts::getInt;
        }
        if (data instanceof AccessorByteData bytes) {
            return bytes::getInt;
        }
        return ((AccessorIntData) data)::get;
    }

    private static Vector3D placed(float[] m, double x, double y, double z) {
        double right = m[0] * x + m[4] * y + m[8] * z + m[12];
        double up = m[1] * x + m[5] * y + m[9] * z + m[13];
        double near = m[2] * x + m[6] * y + m[10] * z + m[14];
        return Vector3D.of(1000 * right, -1000 * near, 1000 * up);
    }
}
