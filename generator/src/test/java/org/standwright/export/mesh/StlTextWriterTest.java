package org.standwright.export.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.standwright.solid.SampleParts;
import org.standwright.solid.Solids;

/** Rules of the text form in the StereoLithography Interface Specification, 1989; from memory. */
class StlTextWriterTest {
    @Test
    void aFacetIsItsNormalAndThreeCornersInFull() throws IOException {
        var lines = text().lines().toList();

        assertThat(lines.get(0)).isEqualTo("solid plain_board");
        assertThat(lines).hasSize(1 + 12 * 7 + 1).endsWith("endsolid plain_board");
        assertThat(lines.get(1)).matches("facet normal( -?[01]){3}");
        assertThat(lines.get(2)).isEqualTo("outer loop");
        assertThat(lines.subList(3, 6)).allMatch(line -> line.matches("vertex( \\d+){3}"));
        assertThat(lines.subList(6, 8)).containsExactly("endloop", "endfacet");
    }

    @Test
    void holdsTheVeryTrianglesOfTheBinaryForm() throws IOException {
        var solid = Solids.of(SampleParts.shelves());
        var binary = new ByteArrayOutputStream();
        StlWriter.write(solid, binary);
        var text = new ByteArrayOutputStream();
        StlTextWriter.write("shelves", solid, text);

        assertThat(ReadStl.triangles(text.toByteArray())).isEqualTo(ReadStl.triangles(binary.toByteArray()));
    }

    private static String text() throws IOException {
        var out = new ByteArrayOutputStream();
        StlTextWriter.write("plain board", Solids.of(SampleParts.plain()), out);
        return out.toString(StandardCharsets.US_ASCII);
    }
}
