package org.standwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.HardwareLine;
import org.standwright.design.Designs;
import org.standwright.part.Part;
import org.standwright.unit.Units;

class CsvWritersTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    @Test
    void writesALineOfTheCutListAsARow() throws IOException {
        var part = Part.blank("side", Designs.BOARD_18.material(), 876.3, 300).cutOver(2);
        var line = new CutLine("A", part, List.of("left side", "right side"), List.of("dado", "groove"));
        CutListCsvWriter.write(new CutList(List.of(line), List.of()), Units.INCH, out);
        assertThat(text()).isEqualTo("""
                label,count,part,material,thickness mm,cut length mm,cut width mm,finished length mm,\
                finished width mm,cut length,cut width,pieces,machining
                A,2,side,board 18,18,880.3,304,876.3,300,34 21/32 in,11 31/32 in,left side; right side,dado; groove
                """);
    }

    @Test
    void roundsToTheMicrometre() {
        assertThat(CsvTable.exact(0.1 + 0.2)).isEqualTo("0.3");
        assertThat(CsvTable.exact(1200)).isEqualTo("1200");
        assertThat(CsvTable.exact(423.5504999)).isEqualTo("423.55");
    }

    /** Quoting as in RFC 4180, section 2, rules 5 to 7. */
    @Test
    void quotesWhatWouldBreakATable() throws IOException {
        HardwareCsvWriter.write(
                List.of(
                        new HardwareLine("washer, 1/4\" \u00d7 3", 4, List.of("a", "b")),
                        new HardwareLine("two\nlines", 1, List.of()),
                        new HardwareLine("plain", 1, List.of("x"))),
                out);
        assertThat(text())
                .isEqualTo("count,item,uses\n"
                        + "4,\"washer, 1/4\"\" \u00d7 3\",a; b\n"
                        + "1,\"two\nlines\",\n"
                        + "1,plain,x\n");
    }

    private String text() {
        return out.toString(StandardCharsets.UTF_8);
    }
}
