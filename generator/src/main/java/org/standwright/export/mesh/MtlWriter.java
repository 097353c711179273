package org.standwright.export.mesh;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.standwright.export.Digits;
import org.standwright.export.SafeNames;
import org.standwright.solid.AssemblySolids;

/** The materials that {@link ObjWriter} names: the colour of each as it looks in plain light, without any gloss. */
public final class MtlWriter {
    private MtlWriter() {}

    /** Under the names that both files use. */
    static Palette palette(AssemblySolids assembly) {
        return Palette.of(assembly, SafeNames.ofPlainLetters());
    }

    public static void write(AssemblySolids assembly, OutputStream out) throws IOException {
        var palette = palette(assembly);
        var text = new StringBuilder("# materials by Standwright\n");
        for (int i = 0; i < palette.size(); i++) {
            var colour = palette.colour(i);
            text.append("newmtl ").append(palette.name(i)).append("\nKd");
            for (int part : new int[] {colour.red(), colour.green(), colour.blue()}) {
                text.append(' ').append(Digits.thousandths(part / 255.0));
            }
            text.append("\nillum 1\n");
        }
        out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
    }
}
