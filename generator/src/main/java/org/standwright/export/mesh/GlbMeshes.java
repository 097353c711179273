package org.standwright.export.mesh;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/**
 * The binary data of a GLB and what says how to read it: first the positions of all bodies, then their indices, in two
 * views. Body {@code i} has the accessors {@code 2 i} for positions and {@code 2 i + 1} for indices.
 */
final class GlbMeshes {
    private static final int FLOAT = 5126;
    private static final int SHORT = 5123;
    private static final int INT = 5125;
    private static final int VERTICES = 34962;
    private static final int INDICES = 34963;
    private static final int PER_VERTEX = 3 * Float.BYTES;
    /** The largest short is no index: it once told drivers to begin anew. */
    private static final int MOST_FOR_SHORTS = 0xffff;

    private final ArrayNode accessors = JsonNodeFactory.instance.arrayNode();
    private final int positions;
    private final ByteBuffer bytes;

    GlbMeshes(List<Body> bodies) {
        positions = bodies.stream()
                .mapToInt(body -> PER_VERTEX * body.solid().vertexCount())
                .sum();
        int indices = bodies.stream().mapToInt(body -> indexBytes(body.solid())).sum();
        bytes = ByteBuffer.allocate(positions + indices).order(ByteOrder.LITTLE_ENDIAN);
        int index = positions;
        int vertex = 0;
        for (var body : bodies) {
            positions(vertex, body.solid());
            vertex += PER_VERTEX * body.solid().vertexCount();
            indices(index, body.solid());
            index += indexBytes(body.solid());
        }
    }

    byte[] bytes() {
        return bytes.array();
    }

    ArrayNode accessors() {
        return accessors;
    }

    ArrayNode views() {
        var views = JsonNodeFactory.instance.arrayNode();
        views.add(view(0, positions, VERTICES).put("byteStride", PER_VERTEX));
        views.add(view(positions, bytes.capacity() - positions, INDICES));
        return views;
    }

    private static ObjectNode view(int offset, int length, int target) {
        var view = JsonNodeFactory.instance.objectNode().put("buffer", 0);
        return view.put("byteOffset", offset).put("byteLength", length).put("target", target);
    }

    private void positions(int offset, Solid solid) {
        var low = new float[] {Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY};
        var high = new float[] {Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY};
        bytes.position(offset);
        for (int i = 0; i < solid.vertexCount(); i++) {
            var position = position(solid.vertex(i));
            for (int axis = 0; axis < 3; axis++) {
                low[axis] = Math.min(low[axis], position[axis]);
                high[axis] = Math.max(high[axis], position[axis]);
                bytes.putFloat(position[axis]);
            }
        }
        var accessor = accessor(0, offset, FLOAT, solid.vertexCount(), "VEC3");
        accessor.set("min", exactly(low));
        accessor.set("max", exactly(high));
        accessors.add(accessor);
    }

    private static float[] position(Vec3 vertex) {
        var turned = Metres.turned(vertex);
        return new float[] {Metres.nearest(turned.x()), Metres.nearest(turned.y()), Metres.nearest(turned.z())};
    }

    private static ArrayNode exactly(float[] position) {
        var array = JsonNodeFactory.instance.arrayNode();
        for (float coordinate : position) {
            array.add(new BigDecimal(coordinate));
        }
        return array;
    }

    private void indices(int offset, Solid solid) {
        bytes.position(offset);
        for (int t = 0; t < solid.triangleCount(); t++) {
            for (int corner = 0; corner < 3; corner++) {
                int index = solid.corner(t, corner);
                if (fitsShorts(solid)) {
                    bytes.putShort((short) index);
                } else {
                    bytes.putInt(index);
                }
            }
        }
        int kind = fitsShorts(solid) ? SHORT : INT;
        accessors.add(accessor(1, offset - positions, kind, 3 * solid.triangleCount(), "SCALAR"));
    }

    private static ObjectNode accessor(int view, int offset, int kind, int count, String type) {
        var accessor = JsonNodeFactory.instance.objectNode().put("bufferView", view);
        return accessor.put("byteOffset", offset)
                .put("componentType", kind)
                .put("count", count)
                .put("type", type);
    }

    /** Filled up to whole words. */
    private static int indexBytes(Solid solid) {
        int each = fitsShorts(solid) ? Short.BYTES : Integer.BYTES;
        return GlbChunks.whole(3 * each * solid.triangleCount());
    }

    private static boolean fitsShorts(Solid solid) {
        return solid.vertexCount() <= MOST_FOR_SHORTS;
    }
}
