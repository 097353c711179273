package org.standwright.export;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Solid;

/** Wavefront OBJ: one object per part, in the order of the assembly, in millimetres with z up. */
public final class ObjWriter {
    private ObjWriter() {}

    public static void write(AssemblySolids assembly, OutputStream out) throws IOException {
        var text = new OutputStreamWriter(out, StandardCharsets.US_ASCII);
        var names = new SafeNames();
        text.write("# " + SafeNames.plain(assembly.name()) + " by Standwright\n# units: mm, z up\n");
        int before = 0;
        for (var placed : assembly.solids()) {
            var solid = placed.inPlace();
            text.write("o " + names.of(placed.label()) + "\ng " + SafeNames.plain(placed.group()) + "\n");
            vertices(solid, text);
            faces(solid, before, text);
            before += solid.vertexCount();
        }
        text.flush();
    }

    private static void vertices(Solid solid, Writer text) throws IOException {
        var lines = new StringBuilder();
        for (int i = 0; i < solid.vertexCount(); i++) {
            var v = solid.vertex(i);
            lines.append("v ").append(Digits.grid(v.x()));
            lines.append(' ').append(Digits.grid(v.y()));
            lines.append(' ').append(Digits.grid(v.z())).append('\n');
        }
        text.append(lines);
    }

    private static void faces(Solid solid, int before, Writer text) throws IOException {
        var lines = new StringBuilder();
        for (int t = 0; t < solid.triangleCount(); t++) {
            lines.append('f');
            for (int corner = 0; corner < 3; corner++) {
                lines.append(' ').append(before + solid.corner(t, corner) + 1);
            }
            lines.append('\n');
        }
        text.append(lines);
    }
}
