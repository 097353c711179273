package org.standwright.export.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.standwright.export.SampleAssembly;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;
import org.w3c.dom.Element;

/** Rules of 3MF Core 1.4 (references, section 8, [C]). */
class ThreeMfWriterTest {
    private final AssemblySolids solids = AssemblySolids.of(SampleAssembly.twoSidesAndABack());
    private final byte[] file = MeshFormat.THREE_MF.bytes(solids);
    private final ReadThreeMf read = read(file);

    private static ReadThreeMf read(byte[] file) {
        try {
            return new ReadThreeMf(file);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void thePackageSaysWhatItsPartsAre() throws IOException {
        assertThat(read.entries()).containsOnlyKeys("[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model");
        assertThat(text("[Content_Types].xml"))
                .contains("Extension=\"model\" ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"");
        assertThat(text("_rels/.rels"))
                .contains("Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"");
    }

    private String text(String entry) {
        return new String(read.entries().get(entry), StandardCharsets.UTF_8);
    }

    @Test
    void everyEntryIsStoredAsItIsWithoutAClock() throws IOException {
        try (var zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                assertThat(entry.getMethod()).isEqualTo(ZipEntry.STORED);
                assertThat(entry.getTimeLocal()).isEqualTo(LocalDateTime.of(1980, 1, 1, 0, 0));
            }
        }
    }

    @Test
    void saysItsUnitAndWhatItIsCalled() throws IOException {
        assertThat(read.model().getAttribute("unit")).isEqualTo("millimeter");
        assertThat(read.all("metadata"))
                .extracting(data -> data.getAttribute("name") + ": " + data.getTextContent())
                .containsExactly("Title: Wäller's stand", "Application: Standwright");
    }

    @Test
    void everyWorkpieceIsOneObjectAndTheAssemblyAnotherThatComesLast() throws IOException {
        assertThat(read.all("object"))
                .extracting(object -> object.getAttribute("name"))
                .containsExactly("left side and 1 more like it", "right side", "drawer", "Wäller's stand");
        assertThat(read.all("component"))
                .extracting(component -> component.getAttribute("objectid"))
                .containsExactly("2", "2", "3", "4");
        assertThat(read.all("item"))
                .extracting(item -> item.getAttribute("objectid"))
                .containsExactly("5");
    }

    @Test
    void everyObjectHasAMaterialWithItsColour() throws IOException {
        assertThat(read.all("base"))
                .extracting(base -> base.getAttribute("name") + " " + base.getAttribute("displaycolor"))
                .containsExactly("birch plywood #D9B982", "drawer plywood #D9B982");
        assertThat(read.all("object"))
                .extracting(object -> object.getAttribute("pid") + object.getAttribute("pindex"))
                .containsExactly("10", "10", "11", "");
    }

    @Test
    void everyEdgeOfEveryObjectIsThereOnceInEitherDirection() throws IOException {
        for (var object : read.all("object")) {
            var edges = new HashSet<List<String>>();
            var triangles = object.getElementsByTagNameNS("*", "triangle");
            for (int i = 0; i < triangles.getLength(); i++) {
                for (var edge : edges((Element) triangles.item(i))) {
                    assertThat(edges.add(edge))
                            .as("edge %s is there once", edge)
                            .isTrue();
                }
            }
            assertThat(edges).allMatch(edge -> edges.contains(List.of(edge.get(1), edge.get(0))));
        }
    }

    private static List<List<String>> edges(Element triangle) {
        var a = triangle.getAttribute("v1");
        var b = triangle.getAttribute("v2");
        var c = triangle.getAttribute("v3");
        return List.of(List.of(a, b), List.of(b, c), List.of(c, a));
    }

    @Test
    void everyObjectHasAVolumeAndWhatIsBuiltStandsInTheCornerOfThePlate() throws IOException {
        assertThat(read.objects()).allMatch(object -> object.volume() > 0);
        var low = read.built().stream()
                .map(ReadMesh::low)
                .reduce((p, q) -> Vector3D.of(
                        Math.min(p.getX(), q.getX()), Math.min(p.getY(), q.getY()), Math.min(p.getZ(), q.getZ())));
        assertThat(low).contains(Vector3D.ZERO);
    }

    @Test
    void withoutPartsThereIsNothingToBuild() throws IOException {
        var none = read(MeshFormat.THREE_MF.bytes(new AssemblySolids("nothing", Fineness.FILE, List.of())));

        assertThat(none.all("object")).isEmpty();
        assertThat(none.all("item")).isEmpty();
    }
}
