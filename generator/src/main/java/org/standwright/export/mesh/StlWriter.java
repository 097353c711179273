package org.standwright.export.mesh;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.standwright.geom.Vec3;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.PlacedSolid;
import org.standwright.solid.Solid;

/**
 * Binary STL: a header of 80 bytes, the number of triangles, then 50 bytes each, little endian. Millimetres, z up. Every
 * coordinate is an exact float.
 */
public final class StlWriter {
    private static final int HEADER = 80;
    private static final int PER_TRIANGLE = 50;
    /** A reader takes a file that starts with "solid" for the text form. */
    private static final String TITLE = "binary STL in mm by Standwright";

    private StlWriter() {}

    /** One solid in its own frame. */
    public static void write(Solid solid, OutputStream out) throws IOException {
        write(List.of(solid), out);
    }

    /** All parts of an assembly where they belong. */
    public static void write(AssemblySolids assembly, OutputStream out) throws IOException {
        write(assembly.solids().stream().map(PlacedSolid::inPlace).toList(), out);
    }

    private static void write(List<Solid> solids, OutputStream out) throws IOException {
        var header = ByteBuffer.allocate(HEADER + Integer.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        header.put(TITLE.getBytes(StandardCharsets.US_ASCII));
        header.putInt(HEADER, solids.stream().mapToInt(Solid::triangleCount).sum());
        out.write(header.array());
        for (var solid : solids) {
            out.write(triangles(solid));
        }
    }

    private static byte[] triangles(Solid solid) {
        var bytes = ByteBuffer.allocate(PER_TRIANGLE * solid.triangleCount()).order(ByteOrder.LITTLE_ENDIAN);
        for (int triangle = 0; triangle < solid.triangleCount(); triangle++) {
            put(bytes, solid.normal(triangle));
            for (int corner = 0; corner < 3; corner++) {
                put(bytes, solid.vertex(solid.corner(triangle, corner)));
            }
            bytes.putShort((short) 0);
        }
        return bytes.array();
    }

    private static void put(ByteBuffer bytes, Vec3 v) {
        // adding 0 makes -0 a plain 0
        bytes.putFloat((float) v.x() + 0f).putFloat((float) v.y() + 0f).putFloat((float) v.z() + 0f);
    }
}
