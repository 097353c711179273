package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Layout;
import org.standwright.design.Place;
import org.standwright.design.StandDesign;
import org.standwright.design.Work;
import org.standwright.design.WorkingHeight;
import org.standwright.design.Worktop;
import org.standwright.make.Format;
import org.standwright.make.Product;

/** What is written and what is built differ in a mirrored stand with a height from an elbow; every output keeps them apart. */
class MirroredElbowTest {
    /**
     * Elbow 1060.5 + 25 for shoes - 75 for light work = 1010.5 mm, on the tape 1011. Worktop 10 + 720 + 30 wide; the base
     * of 560 stands 50 from the written left edge, so 150 from the left edge as built.
     */
    private static final StandDesign DESIGN = Draft.of(Designs.planerStand(), draft -> {
        draft.layout = Layout.MIRRORED;
        draft.workingHeight = new WorkingHeight.Elbow(1060.5, 25, Work.LIGHT);
        draft.worktop = new Worktop(Designs.BOARD_18, 2, new Worktop.Overhang(20, 0, 10, 30), Optional.empty());
        var none = OptionalDouble.empty();
        draft.place = new Place(0, new Place.Margins(none, none, OptionalDouble.of(50), none), Optional.empty());
    });

    private static final Product PRODUCT = Product.of(DESIGN);

    @Test
    void theReportSaysBoth() {
        var report = Report.of(PRODUCT);

        assertThat(report.entry().text("/built/note")).contains("'design' is as written", "nearest mark of the tape");
        assertThat(report.entry().at("/built/mirrored").json().booleanValue()).isTrue();
        assertThat(report.number("/design/workingHeight/height")).isEqualTo(1010.5);
        assertThat(report.number("/built/workingHeight")).isEqualTo(1011);
        assertThat(report.number("/design/overhang/left")).isEqualTo(10);
        assertThat(report.number("/built/overhang/left")).isEqualTo(30);
        assertThat(report.number("/machine/base/min/0")).isEqualTo(-30 + 150);
        assertThat(report.list("/design/bays").get(0).number("/width")).isEqualTo(400);
        var right = Area.of(report.list("/bays").get(1).at("/opening"));
        assertThat(right.width()).isEqualTo(400);
    }

    @Test
    void allThatIsReadShowsTheStandAsBuilt() throws IOException {
        assertThat(text("cut-list.txt")).contains("Working height 1011 mm");
        try (var packet = Loader.loadPDF(bytes("packet.pdf"))) {
            var words = new PDFTextStripper().getText(packet).replaceAll("\\s+", " ");
            assertThat(words)
                    .contains("a working height of 1011 mm")
                    .contains("the middle is 1010.5 mm, built to the nearest mark of the tape, 1011 mm")
                    .contains("Sum = working height 1011")
                    .contains("distance, less than 0 where it reaches over 150 50");
        }
        assertThat(PRODUCT.findings())
                .filteredOn(finding -> finding.rule().equals("elbow-height"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message())
                        .startsWith("1011 mm, for this elbow and work anything from 985.5 to 1035.5 mm."));
    }

    private static String text(String name) throws IOException {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String name) throws IOException {
        var files = Format.files(EnumSet.allOf(Format.class), PRODUCT);
        var file = files.stream().filter(one -> one.name().equals(name)).findFirst();
        var out = new ByteArrayOutputStream();
        file.orElseThrow().content().writeTo(out);
        return out.toByteArray();
    }
}
