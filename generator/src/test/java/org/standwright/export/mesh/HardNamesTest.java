package org.standwright.export.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import de.javagl.jgltf.model.NamedModelElement;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standwright.export.SafeNames;
import org.standwright.solid.AssemblySolids;

/** Whatever parts and materials are called, every file can be read, and names that differ stay different. */
class HardNamesTest {
    private final AssemblySolids solids = MeshNames.hard();

    @ParameterizedTest
    @EnumSource
    void everyPartIsThere(MeshFormat format) throws IOException {
        assertThat(format.read(format.bytes(solids), solids)).hasSameSizeAs(MeshNames.HARD);
    }

    @ParameterizedTest
    @EnumSource(
            names = {"STL", "STL_TEXT"},
            mode = EnumSource.Mode.EXCLUDE)
    void noTwoPartsAreCalledTheSame(MeshFormat format) throws IOException {
        if (format == MeshFormat.THREE_MF) {
            assertThat(new ReadThreeMf(format.bytes(solids)).objects())
                    .extracting(ReadMesh::name)
                    .doesNotHaveDuplicates();
            return;
        }
        assertThat(format.read(format.bytes(solids), solids))
                .extracting(ReadMesh::name)
                .doesNotHaveDuplicates();
    }

    @Test
    void plainLettersAreKeptAndAllElseIsTakenOutOfObj() throws IOException {
        var read = ReadObj.of(MeshFormat.OBJ.bytes(solids));

        assertThat(read.objects()).extracting(ReadMesh::name).allMatch(name -> name.matches("[A-Za-z0-9._-]+"));
        assertThat(read.materials()).doesNotHaveDuplicates().allMatch(name -> name.matches("[A-Za-z0-9._-]+"));
        assertThat(read.objects().get(0).name()).isEqualTo("plain");
    }

    @Test
    void theLibraryOfAnObjHasExactlyTheMaterialsThatItUses() throws IOException {
        var library = new ByteArrayOutputStream();
        MtlWriter.write(solids, library);
        var named = library.toString(StandardCharsets.US_ASCII)
                .lines()
                .filter(line -> line.startsWith("newmtl "))
                .map(line -> line.substring("newmtl ".length()))
                .toList();

        assertThat(ReadObj.of(MeshFormat.OBJ.bytes(solids)).materials()).containsExactlyElementsOf(named);
    }

    @Test
    void glbAndThreeMfKeepEveryLetterThatThereIs() throws IOException {
        var glb = ReadGlb.of(MeshFormat.GLB.bytes(solids)).stream()
                .map(ReadMesh::name)
                .toList();
        var objects = new ReadThreeMf(MeshFormat.THREE_MF.bytes(solids)).objects();

        // all boards are one workpiece, each of a material of its own
        assertThat(objects).extracting(ReadMesh::name).isEqualTo(glb);
        assertThat(glb)
                .contains("a \"quoted\" & <tagged> 'name'", "板", "側板", "Seitenwand weiß", "🪚 saw", "🪛 driver")
                .contains("half \ufffd of a pair", "half \ufffd of a pair_2", "two lines and a tab ");
        assertThat(ReadGlb.model(MeshFormat.GLB.bytes(solids)).getMaterialModels())
                .extracting(NamedModelElement::getName)
                .doesNotHaveDuplicates();
    }

    @Test
    void aTextOfStlBeginsAndEndsWithThePlainName() throws IOException {
        var lines = new String(MeshFormat.STL_TEXT.bytes(solids), StandardCharsets.US_ASCII)
                .lines()
                .toList();

        assertThat(lines.get(0)).matches("solid [A-Za-z0-9._-]+");
        assertThat(lines.get(lines.size() - 1)).isEqualTo("end" + lines.get(0));
    }

    @Test
    void takenNamesGetTheNextNumber() {
        var names = SafeNames.ofPlainLetters();

        assertThat(List.of("a b", "a_b", "a_b_2", "a\tb").stream().map(names::of))
                .containsExactly("a_b", "a_b_2", "a_b_2_2", "a_b_3");
    }

    @Test
    void printableNamesHoldNothingThatXmlCannot() {
        // XML 1.0, production 2 (Char), less the white space that an attribute loses; from memory
        var held = Pattern.compile("[\\x{20}-\\x{d7ff}\\x{e000}-\\x{fffd}\\x{10000}-\\x{10ffff}]")
                .asMatchPredicate();

        assertThat(IntStream.rangeClosed(0, Character.MAX_CODE_POINT)
                        .filter(c -> !held.test(SafeNames.printable(Character.toString(c)))))
                .isEmpty();
    }
}
