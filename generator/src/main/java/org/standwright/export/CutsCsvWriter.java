package org.standwright.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.cutlist.CutList;
import org.standwright.packet.words.BevelRips;
import org.standwright.packet.words.CuttingOrder;
import org.standwright.packet.words.Guide;
import org.standwright.packet.words.NumberedSetUp;
import org.standwright.packet.words.SawWords;
import org.standwright.part.Material;
import org.standwright.sheet.Cut;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.SetUp.Made;
import org.standwright.sheet.SheetPlan;
import org.standwright.unit.Units;

/**
 * Every cut of the sheets as a row, material by material, in the order in which they are sawn; after those of a stage one
 * row for each setting with a tilted blade, which is no cut of the sheets, and one for the tips.
 */
public final class CutsCsvWriter {
    private static final List<String> HEADER = List.of(
            "material",
            "stage",
            "set-up",
            "cut",
            "sheet",
            "tool",
            "kind",
            "purpose",
            "fence mm",
            "fence",
            "from edge",
            "guide",
            "good face",
            "score",
            "frees");

    private CutsCsvWriter() {}

    /** @param waiting labels of the pieces of the second stage */
    public static void write(SheetPlan plan, CutList cutList, Set<String> waiting, Units units, OutputStream out)
            throws IOException {
        var rows = new ArrayList<List<String>>();
        for (var material : plan.materials()) {
            var board = material.material();
            var order = CuttingOrder.of(material, waiting);
            stage(board, "1", order.now(), cutList, units, rows);
            stage(board, "2", order.later(), cutList, units, rows);
        }
        CsvTable.write(HEADER, rows, out);
    }

    private static void stage(
            Material material,
            String stage,
            List<NumberedSetUp> setUps,
            CutList cutList,
            Units units,
            List<List<String>> rows) {
        setUps.forEach(setUp -> rows(material, stage, setUp, units, rows));
        for (var rip : BevelRips.of(setUps, cutList)) {
            var all = Stream.of(rip.pairs(), rip.wholes(), rip.singles())
                    .flatMap(List::stream)
                    .toList();
            var kind = "rip, blade tilted " + CsvTable.exact(rip.tilt()) + "\u00b0";
            rows.add(tilted(material, stage, kind, "bevel", rip.fence(), "up", all, units));
            if (rip.tip() > 0 && !rip.pairs().isEmpty()) {
                rows.add(tilted(material, stage, "rip", "tip", rip.finished(), "", rip.pairs(), units));
            }
        }
    }

    private static List<String> tilted(
            Material material,
            String stage,
            String kind,
            String purpose,
            double fence,
            String goodFace,
            List<PlacedPiece> pieces,
            Units units) {
        return List.of(
                material.name(),
                stage,
                "",
                "",
                "",
                SawWords.tool(Cut.Tool.SAW),
                kind,
                purpose,
                CsvTable.exact(fence),
                units.length(fence),
                "",
                Guide.FENCE.words(),
                goodFace,
                "",
                pieces.stream()
                        .flatMap(piece -> piece.parts().stream())
                        .map(PlacedPiece::label)
                        .collect(Collectors.joining("; ")));
    }

    private static void rows(
            Material material, String stage, NumberedSetUp setUp, Units units, List<List<String>> rows) {
        setUp.setUp().cuts().forEach(made -> rows.add(row(material, stage, setUp, made, units)));
    }

    private static List<String> row(Material material, String stage, NumberedSetUp setUp, Made made, Units units) {
        var cut = made.cut();
        return List.of(
                material.name(),
                stage,
                Integer.toString(setUp.number()),
                Integer.toString(cut.number()),
                Integer.toString(made.sheet() + 1),
                SawWords.tool(cut.tool()),
                SawWords.word(cut.direction()),
                SawWords.word(cut.purpose()),
                CsvTable.exact(setUp.setting()),
                units.length(setUp.setting()),
                SawWords.edge(cut.reference()),
                Guide.of(cut).words(),
                cut.goodFaceUp() ? "up" : "down",
                cut.isScored(material) ? "yes" : "",
                String.join("; ", SawWords.frees(made)));
    }
}
