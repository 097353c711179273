package org.standwright.export.mesh;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.standwright.export.Digits;
import org.standwright.export.SafeNames;
import org.standwright.geom.Vec3;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.PlacedSolid;
import org.standwright.solid.Solid;

/**
 * STL as text: the same triangles as {@link StlWriter} writes, for readers that know no other form. One {@code solid} a
 * file, since many a reader stops behind the first. Millimetres, z up, every coordinate in full.
 */
public final class StlTextWriter {
    private StlTextWriter() {}

    /** One solid in its own frame. */
    public static void write(String name, Solid solid, OutputStream out) throws IOException {
        write(name, List.of(solid), out);
    }

    /** All parts of an assembly where they belong. */
    public static void write(AssemblySolids assembly, OutputStream out) throws IOException {
        write(
                assembly.name(),
                assembly.solids().stream().map(PlacedSolid::inPlace).toList(),
                out);
    }

    private static void write(String name, List<Solid> solids, OutputStream out) throws IOException {
        var text = new StringBuilder();
        text.append("solid ").append(SafeNames.plain(name)).append('\n');
        for (var solid : solids) {
            facets(solid, text);
            out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
            text.setLength(0);
        }
        text.append("endsolid ").append(SafeNames.plain(name)).append('\n');
        out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
    }

    private static void facets(Solid solid, StringBuilder text) {
        for (int triangle = 0; triangle < solid.triangleCount(); triangle++) {
            normal(solid.normal(triangle), text.append("facet normal"));
            text.append("\nouter loop\n");
            for (int corner = 0; corner < 3; corner++) {
                Coordinates.append(solid.vertex(solid.corner(triangle, corner)), text.append("vertex "));
                text.append('\n');
            }
            text.append("endloop\nendfacet\n");
        }
    }

    private static void normal(Vec3 normal, StringBuilder text) {
        Digits.millionths(normal.x(), text.append(' '));
        Digits.millionths(normal.y(), text.append(' '));
        Digits.millionths(normal.z(), text.append(' '));
    }
}
