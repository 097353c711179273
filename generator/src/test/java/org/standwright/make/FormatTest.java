package org.standwright.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.standwright.design.Designs;
import org.standwright.design.StandDesign;

class FormatTest {
    private static Product product;

    @BeforeAll
    static void workOut() {
        product = Product.of(design());
    }

    /** One bay with one drawer, so that it is quick. */
    private static StandDesign design() {
        return Designs.stand(
                900, Designs.CASTERS, Designs.planerStand().drawers().mount(), List.of(Designs.bay(Designs.equal(1))));
    }

    @Test
    void makesAFileForEverythingThatThereIsToBuyCutAndAssemble() {
        var names = names(Format.usual());
        assertThat(names)
                .contains(
                        "cut-list.csv",
                        "cuts.csv",
                        "hardware.csv",
                        "cut-list.txt",
                        "report.json",
                        "packet.pdf",
                        "assembly-mm.stl",
                        "assembly.step",
                        "assembly-mm.obj",
                        "assembly-mm.mtl",
                        "assembly.3mf",
                        "assembly.glb",
                        "sheets/01-board-18.svg")
                .anyMatch(name -> name.matches("parts/[A-Z]-bottom-mm\\.stl"))
                .anyMatch(name -> name.matches("parts/[A-Z]-bottom\\.step"))
                .anyMatch(name -> name.matches("parts/[A-Z]-bottom\\.dxf"));
        for (var ending : List.of(".stl", ".step", ".dxf", ".svg", ".pdf")) {
            assertThat(names)
                    .filteredOn(name -> name.startsWith("parts/") && name.endsWith(ending))
                    .hasSize(product.cutList().lines().size());
        }
        assertThat(names.stream().map(name -> name.toLowerCase(Locale.ROOT))).doesNotHaveDuplicates();
    }

    @Test
    void makesOnlyTheFormatsThatAreAskedFor() {
        assertThat(names(EnumSet.of(Format.CSV))).containsExactly("cut-list.csv", "cuts.csv", "hardware.csv");
        assertThat(names(EnumSet.of(Format.OBJ, Format.PDF)))
                .containsExactly("packet.pdf", "assembly-mm.obj", "assembly-mm.mtl");
    }

    @Test
    void makesStlAsTextOnlyWhenItIsAskedFor() {
        assertThat(Format.usual()).isEqualTo(EnumSet.complementOf(EnumSet.of(Format.STL_TEXT)));
        assertThat(names(EnumSet.of(Format.STL_TEXT)))
                .contains("assembly-mm-text.stl")
                .hasSize(1 + product.cutList().lines().size())
                .doesNotContainAnyElementsOf(names(Format.usual()));
    }

    @Test
    void everyFormatHasAWordOfItsOwn() {
        assertThat(Format.values())
                .extracting(Format::word)
                .doesNotHaveDuplicates()
                .contains("3mf", "stl-text");
    }

    @Test
    void makesTheSameBytesFromTheSameDesign() throws IOException {
        assertThat(bytes(Product.of(design()))).isEqualTo(bytes(product));
    }

    private static List<String> names(Set<Format> formats) {
        return Format.files(formats, product).stream().map(OutputFile::name).toList();
    }

    /** Each file's content, one character a byte. */
    private static SortedMap<String, String> bytes(Product product) throws IOException {
        var all = new TreeMap<String, String>();
        for (var file : Format.files(EnumSet.allOf(Format.class), product)) {
            var out = new ByteArrayOutputStream();
            file.content().writeTo(out);
            assertThat(out.size()).as(file.name()).isPositive();
            all.put(file.name(), out.toString(StandardCharsets.ISO_8859_1));
        }
        return all;
    }
}
