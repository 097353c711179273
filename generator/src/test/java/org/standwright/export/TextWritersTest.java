package org.standwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.check.Finding;
import org.standwright.check.RuleText;
import org.standwright.cutlist.CutList;
import org.standwright.design.Designs;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.StandBuilder;
import org.standwright.packet.MixedStand;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.SheetPlanner;
import org.standwright.unit.Units;

class TextWritersTest {
    private static final List<Finding> FINDINGS = List.of(Finding.caution(
            RuleText.plain("rule", "Do they roll?", "a table"), "casters", "lock all four. ".repeat(12)));

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    @Test
    void tellsWhatToBuyAndWhatToCut() throws IOException {
        var lines = cutList(StandBuilder.build(Designs.planerStand()));
        assertThat(lines)
                .startsWith("planer stand", "============", "Working height 900 mm, for planer.")
                .contains("Watch out", "Boards", "Cut from board 18, 18 mm thick", "Hardware")
                .anyMatch(line -> line.matches("CAUTION casters: lock all four\\. .*"))
                .anyMatch(line -> line.matches("\\S+ +2 x +560 +x +\\d+ mm  caster block lower"))
                .anyMatch(line -> line.matches(" *\\d+ x  board 18 +2440 x 1220 mm"))
                .anyMatch(line -> line.matches("board 18: 2 sheets; proved minimal, \\d+ % used"))
                .allMatch(line -> line.equals(line.stripTrailing()));
    }

    @Test
    void saysWhatItsWordsMeanWhichPiecesALineIsForAndWhichWait() throws IOException {
        assertThat(cutList(StandBuilder.build(Designs.planerStand())))
                .contains("Words")
                .anyMatch(line -> line.startsWith("Show face and bench face: "))
                .anyMatch(line -> line.startsWith("Reference end and reference edge: "))
                .contains("        for drawer 1.2 to 1.4 front")
                .contains("        stage 2: cut after the opening is measured");
    }

    @Test
    void breaksLongSentences() throws IOException {
        assertThat(cutList(StandBuilder.build(Designs.planerStand())))
                .filteredOn(line -> line.contains("lock all four"))
                .hasSizeGreaterThan(1)
                .allMatch(line -> line.length() <= 100);
    }

    @Test
    void writesInchesAsFractions() throws IOException {
        var design = Designs.planerStand().readIn(Units.INCH);
        assertThat(cutList(StandBuilder.build(design)))
                .contains("Working height 35 7/16 in, for planer.")
                .anyMatch(line -> line.matches("\\S+ +2 x +22 1/16  x +4 23/32 in  caster block lower"));
    }

    @Test
    void keepsFractionsOnOneLine() {
        assertThat(WrappedText.lines("y", "  ", " 14 1/2".repeat(15)))
                .hasSize(2)
                .allMatch(line -> line.endsWith("14 1/2"));
    }

    @Test
    void showsTheHeightStackAndHowFarItCanBeSet() throws IOException {
        var stand = StandBuilder.build(Designs.stand(
                900,
                Designs.LEVELERS,
                Designs.planerStand().drawers().mount(),
                Designs.planerStand().bays()));
        OverviewTextWriter.write(stand, out);
        assertThat(lines())
                .anyMatch(line -> line.matches("levelers +40 mm  can be set from 25 to 60 mm"))
                .anyMatch(line -> line.matches("working height +900 mm  can be set from 885 to 920 mm"))
                .anyMatch(line -> line.startsWith("Bay 1, opening 400 x "))
                .anyMatch(line -> line.startsWith("drawer 1.1  front "));
    }

    @Test
    void listsBarsAndTheThreeSizesOfAPiece() throws IOException {
        assertThat(cutList(MixedStand.in(Units.MM)))
                .contains(
                        "Bars to buy", "oak strip, section 40 x 20 mm: 2 m with the cuts, 1 x 2400 mm (proved minimal)")
                .contains("Bar stock: cut from oak strip, section 40 x 20 mm")
                .contains("        rough blank 299 x 423 -> cut size 299 x 423 -> finished size 300 x 424")
                .contains("        banded with birch tape: all four edges");
    }

    @Test
    void showsEverySectionAndHowTheHeightWasFound() throws IOException {
        OverviewTextWriter.write(MixedStand.in(Units.MM), out);
        assertThat(lines())
                .anyMatch(line -> line.startsWith("2 mm below the table saw"))
                .anyMatch(line -> line.startsWith("Mirrored: "))
                .anyMatch(line -> line.matches("door 1.2 +front 424 x 300 mm +hung at the left +shelves at 128"))
                .anyMatch(line -> line.matches("divided +opening 266 x 442 mm +into bays 2a, 2b"))
                .anyMatch(line -> line.startsWith("Bay 2a, opening 124 x 442 mm"))
                .anyMatch(line -> line.matches("clear: vacuum +opening 266 x 182 mm"));
    }

    private List<String> cutList(Stand stand) throws IOException {
        var cutList = CutList.of(stand.assembly(), stand.design().unit());
        var plan = SheetPlanner.plan(Stock.of(stand.design()), cutList);
        CutListTextWriter.write(stand, cutList, plan, FINDINGS, out);
        return lines();
    }

    private List<String> lines() {
        return out.toString(StandardCharsets.UTF_8).lines().toList();
    }
}
