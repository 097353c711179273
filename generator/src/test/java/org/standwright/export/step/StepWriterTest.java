package org.standwright.export.step;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.Designs;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Recess;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Solids;

class StepWriterTest {
    private static final Pattern REFERENCE = Pattern.compile("#(\\d+)");

    private static Part board(String name) {
        return Part.blank(name, Designs.BOARD_18.material(), 200, 100)
                .with(
                        Hole.through(50, 50, 8, "bolt").with(new Recess.Countersink(16, 90)),
                        Hole.blind(Face.BENCH, 150, 50, 5, 12, "pin"));
    }

    @Test
    void aBoardWithTwoHolesHasTwoCylindersAConeAndAPlaneForEachOtherFace() throws IOException {
        var text = part(board("board"));

        assertThat(count(text, "CYLINDRICAL_SURFACE")).isEqualTo(2);
        assertThat(count(text, "CONICAL_SURFACE")).isEqualTo(1);
        assertThat(count(text, "PLANE(")).isEqualTo(7);
        assertThat(count(text, "CIRCLE")).isEqualTo(5);
        assertThat(count(text, "MANIFOLD_SOLID_BREP")).isEqualTo(1);
        assertThat(text).contains("SI_UNIT(.MILLI.,.METRE.)");
    }

    @Test
    void everyEntityIsThereBeforeItIsNamedAndTheFileIsPlainText() throws IOException {
        var text = assembly(board("it's 木板"), board("other"));
        int last = 0;
        for (var line : text.lines().filter(line -> line.startsWith("#")).toList()) {
            var references = REFERENCE.matcher(line);
            assertThat(references.find()).isTrue();
            assertThat(Integer.parseInt(references.group(1))).isEqualTo(++last);
            while (references.find()) {
                assertThat(Integer.parseInt(references.group(1))).isLessThan(last);
            }
        }
        assertThat(text).isASCII().startsWith("ISO-10303-21;\nHEADER;\n").endsWith("ENDSEC;\nEND-ISO-10303-21;\n");
    }

    /** The circles keep 0.01 mm apart, the polygons of the mesh overlap. */
    @Test
    void theHeaderNamesPartsWhoseRoundFacesStayFlat() throws IOException {
        var close = Part.blank("close", Designs.BOARD_18.material(), 200, 100)
                .with(Hole.through(50, 50, 10, "bolt"), Hole.through(60.01, 50, 10, "bolt"));

        assertThat(part(close))
                .containsPattern("FILE_DESCRIPTION\\(\\('close','close: [1-9]\\d* flat facets in place of");
        assertThat(assembly(board("board"), close)).containsPattern(",'close: [1-9]\\d* flat facets in place of");
        assertThat(part(board("board"))).contains("FILE_DESCRIPTION(('board'),'2;1')");
    }

    @Test
    void equalPartsAreOneProductThatOccursTwice() throws IOException {
        var text = assembly(board("board"), board("board"));

        assertThat(count(text, "MANIFOLD_SOLID_BREP")).isEqualTo(1);
        assertThat(count(text, "=PRODUCT(")).isEqualTo(2);
        assertThat(count(text, "NEXT_ASSEMBLY_USAGE_OCCURRENCE")).isEqualTo(2);
    }

    @Test
    void partsOfOneNameAndTwoShapesAreTwoProducts() throws IOException {
        var text = assembly(board("board"), Part.blank("board", Designs.BOARD_18.material(), 300, 100));

        assertThat(count(text, "MANIFOLD_SOLID_BREP")).isEqualTo(2);
        assertThat(count(text, "=PRODUCT(")).isEqualTo(3);
    }

    @Test
    void theSameDesignGivesTheSameBytes() throws IOException {
        assertThat(assembly(board("board"), board("other"))).isEqualTo(assembly(board("board"), board("other")));
    }

    private static String part(Part part) throws IOException {
        var out = new ByteArrayOutputStream();
        StepWriter.write(part.name(), part, Solids.of(part), out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static String assembly(Part one, Part other) throws IOException {
        var group = new Group(
                "carcass",
                Vec3.ZERO,
                List.of(
                        new PlacedPart("first", one, new Placement(Axis.X_PLUS, Axis.Y_PLUS, Vec3.ZERO)),
                        new PlacedPart("second", other, new Placement(Axis.Z_PLUS, Axis.X_PLUS, Vec3.ZERO))),
                List.of());
        var out = new ByteArrayOutputStream();
        StepWriter.write(AssemblySolids.of(new Assembly("two boards", List.of(group), List.of())), out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static int count(String text, String what) {
        return text.split(Pattern.quote(what), -1).length - 1;
    }
}
