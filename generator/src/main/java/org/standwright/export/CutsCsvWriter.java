package org.standwright.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.standwright.packet.words.CuttingOrder;
import org.standwright.packet.words.Guide;
import org.standwright.packet.words.NumberedSetUp;
import org.standwright.packet.words.SawWords;
import org.standwright.part.Material;
import org.standwright.sheet.SetUp.Made;
import org.standwright.sheet.SheetPlan;
import org.standwright.unit.Units;

/** Every cut of the sheets as a row, material by material, in the order in which they are sawn. */
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
    public static void write(SheetPlan plan, Set<String> waiting, Units units, OutputStream out) throws IOException {
        var rows = new ArrayList<List<String>>();
        for (var material : plan.materials()) {
            var board = material.material();
            var order = CuttingOrder.of(material, waiting);
            order.now().forEach(setUp -> rows(board, "1", setUp, units, rows));
            order.later().forEach(setUp -> rows(board, "2", setUp, units, rows));
        }
        CsvTable.write(HEADER, rows, out);
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
