package org.standwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.HardwareLine;
import org.standwright.design.Designs;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Banding;
import org.standwright.part.Bands;
import org.standwright.part.Bevel;
import org.standwright.part.Edge;
import org.standwright.part.Face;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.SheetGood;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.Proof;
import org.standwright.sheet.SheetPlan;
import org.standwright.unit.Units;

class CsvWritersTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    @Test
    void writesEveryCutAsARowInTheOrderOfTheSaw() throws IOException {
        var piece = new PlacedPiece("A", new Area(0, 0, 1000 * 3200, 300 * 3200), false);
        var cut = new Cut(
                1,
                Cut.Direction.RIP,
                new Area(0, 300 * 3200, 1000 * 3200, 3 * 3200),
                Cut.Tool.SAW,
                Cut.Purpose.DIVIDE,
                Edge.Y0,
                300 * 3200);
        var good = new SheetGood(Designs.BOARD_18.material(), 1000, 500, Optional.empty(), Optional.empty());
        var offcut = new Area(0, 303 * 3200, 1000 * 3200, 197 * 3200);
        var sheet = new PlannedSheet(StockSheet.bought(good), List.of(piece), List.of(cut), List.of(offcut));
        var plan = new MaterialPlan(good.material(), List.of(sheet), new Proof(Proof.Goal.SHEETS, 1, 1));
        CutsCsvWriter.write(
                new SheetPlan(new Saw(3, 0), List.of(plan), true),
                new CutList(List.of(), List.of()),
                Set.of(),
                Units.INCH,
                out);
        assertThat(text()).isEqualTo("""
                material,stage,set-up,cut,sheet,tool,kind,purpose,fence mm,fence,from edge,guide,good face,score,frees
                board 18,1,1,1,1,saw,rip,divide,300,11 13/16 in,lower,fence,up,,A; offcut
                """);
    }

    /** L - t tan 45° = 98 + 2 - 18 = 82 mm; a tip of 2 mm at 45° leaves 16 mm of bevel. */
    @Test
    void writesARowForTheTiltedRipAndOneForTheTips() throws IOException {
        var material = Designs.BOARD_18.material();
        var strip = Part.blank("strip", material, 1000, 98).with(new Bevel(Edge.Y1, Face.BENCH, 45, 16));
        var area = new Area(0, 0, 1000 * 3200, 186 * 3200);
        var half = new PlacedPiece("A", new Area(0, 0, 1000 * 3200, 93 * 3200), false);
        var blank = new PlacedPiece(
                "A + A", area, false, PlacedPiece.Parting.BEVEL, List.of(half, half.moved(0, 93 * 3200)));
        var cut = new Cut(
                1,
                Cut.Direction.RIP,
                new Area(0, 186 * 3200, 1000 * 3200, 3 * 3200),
                Cut.Tool.SAW,
                Cut.Purpose.DIVIDE,
                Edge.Y0,
                186 * 3200);
        var good = new SheetGood(material, 1000, 500, Optional.empty(), Optional.empty());
        var sheet = new PlannedSheet(
                StockSheet.bought(good),
                List.of(blank),
                List.of(cut),
                List.of(new Area(0, 189 * 3200, 1000 * 3200, 311 * 3200)));
        var plan = new MaterialPlan(material, List.of(sheet), new Proof(Proof.Goal.SHEETS, 1, 1));
        var list = new CutList(List.of(new CutLine("A", strip, List.of("1", "2"), List.of())), List.of());
        CutsCsvWriter.write(new SheetPlan(new Saw(3, 0), List.of(plan), true), list, Set.of(), Units.MM, out);

        assertThat(text().lines().skip(2))
                .containsExactly(
                        "board 18,1,,,,saw,\"rip, blade tilted 45°\",bevel,82,82 mm,,fence,up,,A; A",
                        "board 18,1,,,,saw,rip,tip,98,98 mm,,fence,,,A; A");
    }

    @Test
    void writesALineOfTheCutListAsARow() throws IOException {
        var tape = Optional.of(new Banding("tape", 0.5));
        var part = Part.blank("side", Designs.BOARD_18.material(), 876.3, 300)
                .cutOver(2)
                .banded(Bands.atY0(tape));
        var bar = Part.blank("runner", Material.bar("oak 40 x 20", 40, 20, 700), 500, 40);
        var runner = new CutLine("B", bar, List.of("runner"), List.of());
        var line = new CutLine("A", part, List.of("left side", "right side"), List.of("dado", "groove"));
        CutListCsvWriter.write(new CutList(List.of(runner, line), List.of()), Units.INCH, out);
        assertThat(text()).isEqualTo("""
                label,count,part,stock,material,thickness mm,rough length mm,rough width mm,cut length mm,\
                cut width mm,finished length mm,finished width mm,rough length,rough width,band reference end,\
                band far end,band reference edge,band far edge,pieces,machining
                A,2,side,sheet,board 18,18,880.3,303.5,876.3,299.5,876.3,300,34 21/32 in,11 15/16 in,,,tape,,\
                left side; right side,dado; groove
                B,1,runner,bar,oak 40 x 20,20,500,40,500,40,500,40,19 11/16 in,1 9/16 in,,,,,runner,
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
