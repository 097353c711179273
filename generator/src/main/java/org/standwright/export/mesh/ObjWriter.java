package org.standwright.export.mesh;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.standwright.export.SafeNames;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Solid;

/**
 * Wavefront OBJ: one object per part, in the order of the assembly, in millimetres with z up. What moves as one is a
 * group; its line comes before the object's, because to some readers either begins something new, and the later one names
 * what follows.
 */
public final class ObjWriter {
    private ObjWriter() {}

    /** @param library name of the file beside this one that {@link MtlWriter} writes */
    public static void write(AssemblySolids assembly, String library, OutputStream out) throws IOException {
        var names = SafeNames.ofPlainLetters();
        var palette = MtlWriter.palette(assembly);
        var text = new StringBuilder();
        text.append("# ").append(SafeNames.plain(assembly.name())).append(" by Standwright\n# units: mm, z up\n");
        text.append("mtllib ").append(SafeNames.plain(library)).append('\n');
        int before = 0;
        for (var placed : assembly.solids()) {
            text.append("g ").append(SafeNames.plain(placed.group())).append('\n');
            text.append("o ").append(names.of(placed.label())).append('\n');
            text.append("usemtl ")
                    .append(palette.name(palette.index(placed.material())))
                    .append('\n');
            var solid = placed.inPlace();
            vertices(solid, text);
            faces(solid, before, text);
            before += solid.vertexCount();
            out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
            text.setLength(0);
        }
        out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
    }

    private static void vertices(Solid solid, StringBuilder text) {
        for (int i = 0; i < solid.vertexCount(); i++) {
            Coordinates.append(solid.vertex(i), text.append("v "));
            text.append('\n');
        }
    }

    private static void faces(Solid solid, int before, StringBuilder text) {
        for (int t = 0; t < solid.triangleCount(); t++) {
            text.append('f');
            for (int corner = 0; corner < 3; corner++) {
                text.append(' ').append(before + solid.corner(t, corner) + 1);
            }
            text.append('\n');
        }
    }
}
